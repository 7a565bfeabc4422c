using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The López curve, a generalised Michaelis-Menten law: W = (W0 K^c + A t^c) / (K^c + t^c).</summary>
/// <remarks>
/// Hatch weight W0 and the age K at which half of the gain is made are parameters of their own. Gain is highest at
/// K ((c - 1)/(c + 1))^(1/c) for c above 1; otherwise it falls from hatch on. Source: López et al. 2000.
/// </remarks>
public sealed class LopezCurve : GrowthCurve, ICurveFamily<LopezCurve>
{
    private readonly double matureKilograms;
    private readonly double hatchKilograms;
    private readonly double halfwayDays;

    private LopezCurve(double matureKilograms, double hatchKilograms, double halfwayDays, double exponent)
    {
        this.hatchKilograms = Require.Positive(hatchKilograms, "kg", "hatchWeight");
        this.matureKilograms = Require.Above(matureKilograms, hatchKilograms, "kg", "matureWeight");
        this.halfwayDays = Require.Positive(halfwayDays, "d", "halfwayAge");
        Exponent = Require.Positive(exponent, "");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "lopez",
        "López growth curve",
        "W = (W0 K^c + A t^c) / (K^c + t^c); inflection at K ((c - 1)/(c + 1))^(1/c) for c > 1",
        [CurveSources.Weight, CurveSources.Age, .. CurveParameter.Symbols(LopezShape.ParameterList)],
        [CurveSources.Lopez2000],
        CurveSources.FormAccuracy,
        HowKnown.Derived);

    /// <inheritdoc/>
    public override ModelInfo Model => Info;

    /// <inheritdoc/>
    public override Mass? MatureWeight => Mass.FromKilograms(matureKilograms);

    /// <summary>The weight at hatch W0.</summary>
    public Mass HatchWeight => Mass.FromKilograms(hatchKilograms);

    /// <summary>The age K at which half of the way from hatch weight to mature weight is done.</summary>
    public Age HalfwayAge => Age.FromDays(halfwayDays);

    /// <summary>The exponent c, a pure number above 0.</summary>
    public double Exponent { get; }

    /// <inheritdoc/>
    public override Inflection? Inflection
    {
        get
        {
            if (Exponent <= 1)
            {
                return null;
            }

            double days = halfwayDays * Math.Pow((Exponent - 1) / (Exponent + 1), 1 / Exponent);
            return new(days, Kilograms(days), KilogramsPerDay(days));
        }
    }

    static IReadOnlyList<CurveParameter> ICurveFamily<LopezCurve>.ParameterList => LopezShape.ParameterList;

    static CurveShape ICurveFamily<LopezCurve>.Shape { get; } = new LopezShape();

    /// <summary>The curve from hatch weight, mature weight, the age halfway between and the exponent.</summary>
    /// <param name="hatchWeight">W0, above 0.</param>
    /// <param name="matureWeight">A, above <paramref name="hatchWeight"/>.</param>
    /// <param name="halfwayAge">K, above 0.</param>
    /// <param name="exponent">c, a pure number above 0; above 1 the curve has an inflection.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static LopezCurve Of(Mass hatchWeight, Mass matureWeight, Age halfwayAge, double exponent) =>
        new(matureWeight.Kilograms, hatchWeight.Kilograms, halfwayAge.Days, exponent);

    static LopezCurve ICurveFamily<LopezCurve>.FromParameters(ReadOnlySpan<double> parameters) =>
        new(parameters[0], parameters[1], parameters[2], parameters[3]);

    static bool ICurveFamily<LopezCurve>.Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        (double a, double w0, double halfway, double c) = (parameters[0], parameters[1], parameters[2], parameters[3]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double y = Math.Pow(ageDays[i] / halfway, c);
            double done = Share(y);
            double w = w0 + ((a - w0) * done);
            kilograms[i] = w;
            sound &= double.IsFinite(w) && w > 0;
            if (!gradient.IsEmpty)
            {
                double byLogY = (a - w0) * done * (1 - done);
                gradient[i] = done;
                gradient[n + i] = 1 - done;
                gradient[(2 * n) + i] = -byLogY * c / halfway;

                // At hatch y ln(t/K) tends to 0.
                gradient[(3 * n) + i] = ageDays[i] > 0 ? byLogY * Math.Log(ageDays[i] / halfway) : 0;
            }
        }

        return sound;
    }

    void ICurveFamily<LopezCurve>.CopyParameters(Span<double> parameters) =>
        (parameters[0], parameters[1], parameters[2], parameters[3]) = (matureKilograms, hatchKilograms, halfwayDays, Exponent);

    private protected override double Kilograms(double days) => hatchKilograms + ((matureKilograms - hatchKilograms) * Done(days));

    private protected override double KilogramsPerDay(double days)
    {
        // d(y/(1+y))/dt = c y / (t (1+y)^2); at hatch y/t = t^(c-1) / K^c decides: no finite gain there for c below 1.
        double y = Math.Pow(days / halfwayDays, Exponent);
        double sharePerDay = days > 0 ? Share(y) / (1 + y) / days : Math.Pow(0, Exponent - 1) / halfwayDays;
        return (matureKilograms - hatchKilograms) * Exponent * sharePerDay;
    }

    private protected override double DaysAt(double kilograms) =>
        halfwayDays * Math.Pow((kilograms - hatchKilograms) / (matureKilograms - kilograms), 1 / Exponent);

    /// <summary>The share of the way from hatch weight to mature weight.</summary>
    private double Done(double days) => Share(Math.Pow(days / halfwayDays, Exponent));

    /// <summary>y / (1 + y), written so that neither 0 nor infinity leaves a NaN.</summary>
    private static double Share(double y) => 1 / (1 + (1 / y));
}
