using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>The logistic curve: W = A / (1 + exp(-k (t - t*))).</summary>
/// <remarks>Gain is highest at t*, where the bird weighs half its mature weight. Source: Verhulst 1838.</remarks>
public sealed class LogisticCurve : GrowthCurve, ICurveFamily<LogisticCurve>
{
    private readonly double matureKilograms;
    private readonly double ratePerDay;
    private readonly double inflectionDays;

    private LogisticCurve(double matureKilograms, double ratePerDay, double inflectionDays)
    {
        this.matureKilograms = Require.Positive(matureKilograms, "kg", "matureWeight");
        this.ratePerDay = Require.Positive(ratePerDay, "1/d", "rate");
        this.inflectionDays = Require.Finite(inflectionDays, "d", "inflectionAge");
    }

    /// <summary>What the curve is and where it comes from.</summary>
    public static ModelInfo Info { get; } = new(
        "logistic",
        "Logistic growth curve",
        "W = A / (1 + exp(-k (t - t*))); dW/dt = k W (1 - W/A); inflection at t*, A/2, gain k A/4",
        [CurveSources.Weight, CurveSources.Age, .. CurveParameter.Symbols(CurveParameter.Classic)],
        [CurveSources.Verhulst1838],
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
        : new(inflectionDays, matureKilograms / 2, ratePerDay * matureKilograms / 4);

    static IReadOnlyList<CurveParameter> ICurveFamily<LogisticCurve>.ParameterList => CurveParameter.Classic;

    static CurveShape ICurveFamily<LogisticCurve>.Shape { get; } = RichardsShape.Fixed(1);

    /// <summary>The curve from mature weight, rate of maturing and age of highest gain.</summary>
    /// <param name="matureWeight">A, above 0.</param>
    /// <param name="rate">k, above 0 per day.</param>
    /// <param name="inflectionAge">t*, the age of highest gain.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is outside its range.</exception>
    public static LogisticCurve Of(Mass matureWeight, DailyRate rate, Age inflectionAge) =>
        new(matureWeight.Kilograms, rate.PerDay, inflectionAge.Days);

    static LogisticCurve ICurveFamily<LogisticCurve>.FromParameters(ReadOnlySpan<double> parameters) =>
        new(parameters[0], parameters[1], parameters[2]);

    static bool ICurveFamily<LogisticCurve>.Evaluate(
        ReadOnlySpan<double> parameters, ReadOnlySpan<double> ageDays, Span<double> kilograms, Span<double> gradient)
    {
        (double a, double k, double t0) = (parameters[0], parameters[1], parameters[2]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double e = Math.Exp(-k * (ageDays[i] - t0));
            double w = a / (1 + e);
            kilograms[i] = w;
            sound &= double.IsFinite(w) && w > 0;
            if (!gradient.IsEmpty)
            {
                // 1 - W/A, written so that a huge e leaves no NaN.
                double open = 1 / (1 + (1 / e));
                gradient[i] = w / a;
                gradient[n + i] = w * open * (ageDays[i] - t0);
                gradient[(2 * n) + i] = -w * open * k;
            }
        }

        return sound;
    }

    void ICurveFamily<LogisticCurve>.CopyParameters(Span<double> parameters) =>
        (parameters[0], parameters[1], parameters[2]) = (matureKilograms, ratePerDay, inflectionDays);

    private protected override double Kilograms(double days) => matureKilograms / (1 + Math.Exp(-ratePerDay * (days - inflectionDays)));

    private protected override double KilogramsPerDay(double days) =>
        ratePerDay * Kilograms(days) / (1 + Math.Exp(ratePerDay * (days - inflectionDays)));

    private protected override double DaysAt(double kilograms) =>
        inflectionDays - (Math.Log((matureKilograms - kilograms) / kilograms) / ratePerDay);
}
