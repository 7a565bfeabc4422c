using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The Richards curve: W = A (1 + v exp(-k (t - t*)))^(-1/v), where the shape v says at which share of the mature weight gain is highest.</summary>
/// <remarks>
/// v towards 0 is Gompertz, v = 1 logistic, v = -1/3 von Bertalanffy. The shape is above -1: below there is no inflection. For v below
/// 0 the law gives no weight above zero at early ages; asked about such an age the curve refuses. Source: Richards 1959.
/// </remarks>
public sealed class RichardsCurve : GrowthCurve, ICurveFamily<RichardsCurve>
{
    private readonly double matureKilograms;
    private readonly double ratePerDay;
    private readonly double inflectionDays;

    private RichardsCurve(double matureKilograms, double ratePerDay, double inflectionDays, double shape)
    {
        this.matureKilograms = Require.Positive(matureKilograms, "kg", "matureWeight");
        this.ratePerDay = Require.Positive(ratePerDay, "1/d", "rate");
        this.inflectionDays = Require.Finite(inflectionDays, "d", "inflectionAge");
        Shape = Require.Above(shape, -1, "");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "richards",
        "Richards growth curve",
        "W = A (1 + v exp(-k (t - t*)))^(-1/v); v -> 0: A exp(-exp(-k (t - t*))); inflection at t*, A (1 + v)^(-1/v)",
        [CurveSources.Weight, CurveSources.Age, .. CurveParameter.Symbols([.. CurveParameter.Classic, CurveParameter.Shape])],
        [CurveSources.Richards1959],
        CurveSources.FormAccuracy,
        HowKnown.Derived);

    /// <inheritdoc/>
    public override ModelInfo Model => Info;

    /// <inheritdoc/>
    public override Mass? MatureWeight => Mass.FromKilograms(matureKilograms);

    /// <summary>The rate of maturing k.</summary>
    public DailyRate Rate => DailyRate.FromPerDay(ratePerDay);

    /// <summary>The shape v, a pure number above -1.</summary>
    public double Shape { get; }

    /// <inheritdoc/>
    public override Inflection? Inflection => inflectionDays < 0
        ? null
        : new(inflectionDays, Kilograms(inflectionDays), KilogramsPerDay(inflectionDays));

    static IReadOnlyList<CurveParameter> ICurveFamily<RichardsCurve>.ParameterList { get; } =
        [.. CurveParameter.Classic, CurveParameter.Shape];

    static CurveShape ICurveFamily<RichardsCurve>.Shape { get; } = RichardsShape.Free();

    /// <summary>The curve from mature weight, rate of maturing, age of highest gain and shape.</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="inflectionAge">t*, the age of highest gain.</param>
    /// <param name="shape">v, a pure number above -1; 0 is Gompertz.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static RichardsCurve Of(Mass matureWeight, DailyRate rate, Age inflectionAge, double shape) =>
        new(matureWeight.Kilograms, rate.PerDay, inflectionAge.Days, shape);

    static RichardsCurve ICurveFamily<RichardsCurve>.FromParameters(ReadOnlySpan<double> parameters) =>
        new(parameters[0], parameters[1], parameters[2], parameters[3]);

    static bool ICurveFamily<RichardsCurve>.Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        (double a, double k, double t0, double v) = (parameters[0], parameters[1], parameters[2], parameters[3]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            // ln(W/A) = -ln(1 + v e)/v is the same function as in RichardsShape, at u = -e.
            double e = Math.Exp(-k * (ageDays[i] - t0));
            (double log, double byU, double byV) = RichardsShape.Law(v, -e);
            double w = a * Math.Exp(log);
            kilograms[i] = w;
            sound &= double.IsFinite(w) && w > 0;
            if (!gradient.IsEmpty)
            {
                gradient[i] = w / a;
                gradient[n + i] = w * byU * e * (ageDays[i] - t0);
                gradient[(2 * n) + i] = -w * byU * e * k;
                gradient[(3 * n) + i] = w * byV;
            }
        }

        return sound;
    }

    void ICurveFamily<RichardsCurve>.CopyParameters(Span<double> parameters) =>
        (parameters[0], parameters[1], parameters[2], parameters[3]) = (matureKilograms, ratePerDay, inflectionDays, Shape);

    private protected override string AgesCovered => Shape < 0
        ? string.Create(
            CultureInfo.InvariantCulture, $"the curve has a weight after {inflectionDays + (Math.Log(-Shape) / ratePerDay):0.##} d only")
        : base.AgesCovered;

    private protected override double Kilograms(double days) => matureKilograms * Math.Exp(Law(days).Log);

    private protected override double KilogramsPerDay(double days)
    {
        (double log, double byU, _) = Law(days);
        return matureKilograms * Math.Exp(log) * byU * ratePerDay * Remaining(days);
    }

    private protected override double DaysAt(double kilograms)
    {
        // e = ((W/A)^-v - 1)/v, whose limit at v = 0 is -ln(W/A). exp(x) - 1 as 2 exp(x/2) sinh(x/2) keeps its digits near v = 0.
        double log = Math.Log(kilograms / matureKilograms);
        double half = -Shape * log / 2;
        double e = Shape == 0 ? -log : 2 * Math.Exp(half) * Math.Sinh(half) / Shape;
        return inflectionDays - (Math.Log(e) / ratePerDay);
    }

    private (double Log, double ByU, double ByV) Law(double days) => RichardsShape.Law(Shape, -Remaining(days));

    private double Remaining(double days) => Math.Exp(-ratePerDay * (days - inflectionDays));
}
