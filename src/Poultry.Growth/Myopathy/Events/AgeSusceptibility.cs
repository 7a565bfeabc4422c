using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>From which age a bird can be harmed by flapping, and how readily.</summary>
public sealed class AgeSusceptibility
{
    /// <summary>From here on susceptibility is full; what it does later is not known.</summary>
    private const double FullDays = 45;

    private readonly double maleDays;
    private readonly double femaleDays;

    private AgeSusceptibility(double maleDays, double femaleDays) => (this.maleDays, this.femaleDays) = (maleDays, femaleDays);

    /// <summary>Equation, source and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-susceptibility",
        "Susceptibility by age and sex",
        "S(a, sex) = clamp((a - a0) / (45 - a0), 0, 1)",
        [
            new("S(a, sex)", "susceptibility as a part of that at 45 d", "-"),
            new("a", "age", "d"),
            new("a0", "24 for cockerels (20 to 26), 34 for pullets (30 to 36)", "d"),
        ],
        [LesionSources.Lien2012, LesionSources.OwnAssumption],
        "Fitted to the first ages with lesions (26 d cockerels, 36 d pullets) and to cockerels being ahead at 33 and 36 d. The straight line to 45 d is an assumption; later than 45 d nothing is known.",
        HowKnown.Assumption,
        [new ValidityRange("age", 24, 45, "d")]);

    /// <summary>a0 of 24 d for cockerels and 34 d for pullets.</summary>
    public static AgeSusceptibility Published { get; } = new(24, 34);

    /// <summary>a0 at the early end of its range, 20 and 30 d.</summary>
    internal static AgeSusceptibility Earliest { get; } = new(20, 30);

    /// <summary>a0 at the late end, 26 and 36 d.</summary>
    internal static AgeSusceptibility Latest { get; } = new(26, 36);

    /// <summary>The age from which it is full, 45 d.</summary>
    internal static Age Full => Age.FromDays(FullDays);

    /// <summary>Susceptibility as a part of that at 45 d; of mixed birds the mean of both sexes.</summary>
    /// <param name="age">Any; after 45 d it stays full, which nobody measured.</param>
    /// <param name="sex">Mixed is half of each.</param>
    public Probability Share(Age age, Sex sex) => Probability.FromFraction(ShareAt(age.Days, sex, 0));

    /// <summary>The age up to which it is 0; of mixed birds that of cockerels.</summary>
    public Age FirstAge(Sex sex) => Age.FromDays(sex == Sex.Female ? femaleDays : maleDays);

    /// <summary>The first age at which flapping made lesions in the trial: 26 d cockerels, 36 d pullets; of mixed birds that of cockerels.</summary>
    public static Age FirstLesions(Sex sex) => Latest.FirstAge(sex);

    /// <summary>As in <c>from 24 d (cockerels) and 34 d (pullets), full at 45 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"from {maleDays:0.#} d (cockerels) and {femaleDays:0.#} d (pullets), full at {FullDays:0.#} d");

    /// <summary>The same with both first ages moved.</summary>
    /// <param name="days">Age, d.</param>
    /// <param name="sex">Mixed is half of each.</param>
    /// <param name="laterDays">How much later than these a0 lie, d.</param>
    internal double ShareAt(double days, Sex sex, double laterDays) => sex switch
    {
        Sex.Male => Line(days, maleDays + laterDays),
        Sex.Female => Line(days, femaleDays + laterDays),
        _ => (Line(days, maleDays + laterDays) + Line(days, femaleDays + laterDays)) / 2,
    };

    /// <summary>S = clamp((a - a0) / (45 - a0), 0, 1)</summary>
    private static double Line(double days, double first) => Math.Clamp((days - first) / (FullDays - first), 0, 1);
}
