using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Curves;

/// <summary>The answer to "when is the bird so heavy?": an age, or the reason why there is none.</summary>
public sealed class AgeAtWeight
{
    private readonly double kilograms;

    // The age in days where it is reached, else what is never reached or where the table stops.
    private readonly double bound;

    private AgeAtWeight(AgeAtWeightStatus status, double kilograms, double bound) => (Status, this.kilograms, this.bound) = (status, kilograms, bound);

    /// <summary>Whether the weight is reached.</summary>
    public AgeAtWeightStatus Status { get; }

    /// <summary>The age; null unless <see cref="Status"/> is <see cref="AgeAtWeightStatus.Reached"/>.</summary>
    public Age? Age => Status == AgeAtWeightStatus.Reached ? Primitives.Age.FromDays(bound) : null;

    /// <summary>The answer in one sentence.</summary>
    public string Explanation => Status switch
    {
        AgeAtWeightStatus.Reached => string.Create(CultureInfo.InvariantCulture, $"{WeightText.Of(kilograms)} at {bound:0.0} d."),
        AgeAtWeightStatus.AboveMatureWeight => string.Create(CultureInfo.InvariantCulture, $"Never {WeightText.Of(kilograms)}: the curve tends to {WeightText.Of(bound)}."),
        AgeAtWeightStatus.BelowHatchWeight => string.Create(CultureInfo.InvariantCulture, $"The curve is above {WeightText.Of(kilograms)} from hatch on."),
        AgeAtWeightStatus.BeyondTable => string.Create(CultureInfo.InvariantCulture, $"The table ends at {bound:0.##} d below {WeightText.Of(kilograms)}."),
        _ => string.Create(CultureInfo.InvariantCulture, $"The table starts at {bound:0.##} d above {WeightText.Of(kilograms)}."),
    };

    /// <summary>The answer in one sentence.</summary>
    public override string ToString() => Explanation;

    internal static AgeAtWeight Reached(double kilograms, double days) => new(AgeAtWeightStatus.Reached, kilograms, days);

    internal static AgeAtWeight AboveMatureWeight(double kilograms, double matureKilograms) => new(AgeAtWeightStatus.AboveMatureWeight, kilograms, matureKilograms);

    internal static AgeAtWeight BelowHatchWeight(double kilograms) => new(AgeAtWeightStatus.BelowHatchWeight, kilograms, 0);

    internal static AgeAtWeight BeyondTable(double kilograms, double lastDays) => new(AgeAtWeightStatus.BeyondTable, kilograms, lastDays);

    internal static AgeAtWeight BeforeTable(double kilograms, double firstDays) => new(AgeAtWeightStatus.BeforeTable, kilograms, firstDays);
}
