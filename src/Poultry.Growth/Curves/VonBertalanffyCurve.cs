using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The von Bertalanffy curve for weights: W = A (1 - b exp(-k t))^3, with b = exp(k t*) / 3.</summary>
/// <remarks>
/// Gain is highest at t* = ln(3 b) / k, where the bird weighs 30 % (8/27) of its mature weight. Before t* - ln(3)/k the law gives no
/// weight above zero; asked about such an age the curve refuses. Source: von Bertalanffy 1957.
/// </remarks>
public sealed class VonBertalanffyCurve : GrowthCurve, ICurveFamily<VonBertalanffyCurve>
{
    private readonly double matureKilograms;
    private readonly double ratePerDay;
    private readonly double inflectionDays;

    private VonBertalanffyCurve(double matureKilograms, double ratePerDay, double inflectionDays)
    {
        this.matureKilograms = Require.Positive(matureKilograms, "kg", "matureWeight");
        this.ratePerDay = Require.Positive(ratePerDay, "1/d", "rate");
        this.inflectionDays = Require.Finite(inflectionDays, "d", "inflectionAge");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "von-bertalanffy",
        "von Bertalanffy growth curve",
        "W = A (1 - exp(-k (t - t*)) / 3)^3 = A (1 - b exp(-k t))^3, b = exp(k t*) / 3; inflection at t*, 8 A/27, gain 4 k A/9",
        [
            CurveSources.Weight,
            CurveSources.Age,
            .. CurveParameter.Symbols(CurveParameter.Classic),
            new ModelSymbol("b", "constant of the older writing", "-"),
        ],
        [CurveSources.VonBertalanffy1957],
        CurveSources.FormAccuracy,
        HowKnown.Derived);

    /// <inheritdoc/>
    public override ModelInfo Model => Info;

    /// <inheritdoc/>
    public override Mass? MatureWeight => Mass.FromKilograms(matureKilograms);

    /// <summary>The rate of maturing k.</summary>
    public DailyRate Rate => DailyRate.FromPerDay(ratePerDay);

    /// <inheritdoc/>
    public override Inflection? Inflection => inflectionDays < 0
        ? null
        : new(inflectionDays, 8 * matureKilograms / 27, 4 * ratePerDay * matureKilograms / 9);

    static IReadOnlyList<CurveParameter> ICurveFamily<VonBertalanffyCurve>.ParameterList => CurveParameter.Classic;

    static CurveShape ICurveFamily<VonBertalanffyCurve>.Shape { get; } = RichardsShape.Fixed(-1.0 / 3);

    /// <summary>The curve from mature weight, rate of maturing and age of highest gain.</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="inflectionAge">t*, the age of highest gain.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static VonBertalanffyCurve Of(Mass matureWeight, DailyRate rate, Age inflectionAge) =>
        new(matureWeight.Kilograms, rate.PerDay, inflectionAge.Days);

    /// <summary>The curve from mature weight, rate of maturing and the constant b of W = A (1 - b exp(-k t))^3.</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="constant">b, a pure number above 0; below 1 where the weight at hatch is above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static VonBertalanffyCurve FromConstant(Mass matureWeight, DailyRate rate, double constant) => new(
        matureWeight.Kilograms,
        rate.PerDay,
        Math.Log(3 * Require.Positive(constant, "")) / Require.Positive(rate.PerDay, "1/d", nameof(rate)));

    static VonBertalanffyCurve ICurveFamily<VonBertalanffyCurve>.FromParameters(ReadOnlySpan<double> parameters) =>
        new(parameters[0], parameters[1], parameters[2]);

    static bool ICurveFamily<VonBertalanffyCurve>.Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        (double a, double k, double t0) = (parameters[0], parameters[1], parameters[2]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double e = Math.Exp(-k * (ageDays[i] - t0));
            double root = 1 - (e / 3);
            double w = a * root * root * root;
            kilograms[i] = w;
            sound &= double.IsFinite(w) && w > 0;
            if (!gradient.IsEmpty)
            {
                gradient[i] = w / a;
                gradient[n + i] = a * root * root * e * (ageDays[i] - t0);
                gradient[(2 * n) + i] = -a * root * root * e * k;
            }
        }

        return sound;
    }

    void ICurveFamily<VonBertalanffyCurve>.CopyParameters(Span<double> parameters) =>
        (parameters[0], parameters[1], parameters[2]) = (matureKilograms, ratePerDay, inflectionDays);

    private protected override string AgesCovered => string.Create(
        CultureInfo.InvariantCulture, $"the curve has a weight after {inflectionDays - (Math.Log(3) / ratePerDay):0.##} d only");

    private protected override double Kilograms(double days)
    {
        double root = Root(days);
        return matureKilograms * root * root * root;
    }

    private protected override double KilogramsPerDay(double days)
    {
        double root = Root(days);
        return matureKilograms * root * root * ratePerDay * 3 * (1 - root);
    }

    private protected override double DaysAt(double kilograms) =>
        inflectionDays - (Math.Log(3 * (1 - Math.Cbrt(kilograms / matureKilograms))) / ratePerDay);

    /// <summary>1 - b exp(-k t), the cube root of the share of the mature weight; NaN before there is one.</summary>
    private double Root(double days)
    {
        double root = 1 - (Math.Exp(-ratePerDay * (days - inflectionDays)) / 3);
        return root > 0 ? root : double.NaN;
    }
}
