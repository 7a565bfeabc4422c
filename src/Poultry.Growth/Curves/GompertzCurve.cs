using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The Gompertz curve, the usual law of meat birds: W = A exp(-exp(-k (t - t*))).</summary>
/// <remarks>
/// Gain is highest at t*, where the bird weighs 37 % (1/e) of its mature weight. Written W = A exp(-b exp(-k t)) with b = exp(k t*) it
/// is the same curve, and with b = ln(A / hatch weight) as well: the three factories differ in what is known.
/// Source: Winsor 1932; Duan-yai et al. 1999 for the equality of the forms.
/// </remarks>
public sealed class GompertzCurve : GrowthCurve, ICurveFamily<GompertzCurve>
{
    private readonly double matureKilograms;
    private readonly double ratePerDay;
    private readonly double inflectionDays;

    private GompertzCurve(double matureKilograms, double ratePerDay, double inflectionDays)
    {
        this.matureKilograms = Require.Positive(matureKilograms, "kg", "matureWeight");
        this.ratePerDay = Require.Positive(ratePerDay, "1/d", "rate");
        this.inflectionDays = Require.Finite(inflectionDays, "d", "inflectionAge");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "gompertz",
        "Gompertz growth curve",
        "W = A exp(-exp(-k (t - t*))); dW/dt = k W exp(-k (t - t*)); inflection at t*, A/e, gain k A/e",
        [CurveSources.Weight, CurveSources.Age, .. CurveParameter.Symbols(CurveParameter.Classic)],
        [CurveSources.Gompertz1825, CurveSources.Winsor1932, CurveSources.DuanYai1999],
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
        : new(inflectionDays, matureKilograms / Math.E, ratePerDay * matureKilograms / Math.E);

    static IReadOnlyList<CurveParameter> ICurveFamily<GompertzCurve>.ParameterList => CurveParameter.Classic;

    static CurveShape ICurveFamily<GompertzCurve>.Shape { get; } = RichardsShape.Fixed(0);

    /// <summary>The curve from mature weight, rate of maturing and age of highest gain.</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="inflectionAge">t*, the age of highest gain.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static GompertzCurve Of(Mass matureWeight, DailyRate rate, Age inflectionAge) =>
        new(matureWeight.Kilograms, rate.PerDay, inflectionAge.Days);

    /// <summary>The curve from mature weight, rate of maturing and the constant b of W = A exp(-b exp(-k t)).</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="constant">b = ln(mature weight / hatch weight), a pure number above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static GompertzCurve FromConstant(Mass matureWeight, DailyRate rate, double constant) => new(
        matureWeight.Kilograms,
        rate.PerDay,
        Math.Log(Require.Positive(constant, "")) / Require.Positive(rate.PerDay, "1/d", nameof(rate)));

    /// <summary>The curve from hatch weight, mature weight and rate of maturing.</summary>
    /// <param name="hatchWeight">W at 0 d, above 0 and below <paramref name="matureWeight"/>.</param>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static GompertzCurve FromHatchWeight(Mass hatchWeight, Mass matureWeight, DailyRate rate)
    {
        Require.Positive(hatchWeight.Kilograms, "kg", nameof(hatchWeight));
        Require.Above(matureWeight.Kilograms, hatchWeight.Kilograms, "kg", nameof(matureWeight));
        return FromConstant(matureWeight, rate, Math.Log(matureWeight.Kilograms / hatchWeight.Kilograms));
    }

    static GompertzCurve ICurveFamily<GompertzCurve>.FromParameters(ReadOnlySpan<double> parameters) =>
        new(parameters[0], parameters[1], parameters[2]);

    static bool ICurveFamily<GompertzCurve>.Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        (double a, double k, double t0) = (parameters[0], parameters[1], parameters[2]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double e = Math.Exp(-k * (ageDays[i] - t0));
            double w = a * Math.Exp(-e);
            kilograms[i] = w;
            sound &= double.IsFinite(w) && w > 0;
            if (!gradient.IsEmpty)
            {
                gradient[i] = w / a;
                gradient[n + i] = w * e * (ageDays[i] - t0);
                gradient[(2 * n) + i] = -w * e * k;
            }
        }

        return sound;
    }

    void ICurveFamily<GompertzCurve>.CopyParameters(Span<double> parameters) =>
        (parameters[0], parameters[1], parameters[2]) = (matureKilograms, ratePerDay, inflectionDays);

    private protected override double Kilograms(double days) => matureKilograms * Math.Exp(-Remaining(days));

    private protected override double KilogramsPerDay(double days) => ratePerDay * Remaining(days) * Kilograms(days);

    private protected override double DaysAt(double kilograms) =>
        inflectionDays - (Math.Log(Math.Log(matureKilograms / kilograms)) / ratePerDay);

    /// <summary>exp(-k (t - t*)): the logarithm of how many times heavier the mature bird is.</summary>
    private double Remaining(double days) => Math.Exp(-ratePerDay * (days - inflectionDays));
}
