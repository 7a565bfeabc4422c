using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Curves;

/// <summary>The answer to "when is the bird so heavy?": an age, or the reason why there is none.</summary>
public sealed class AgeAtWeight
{
    private AgeAtWeight(AgeAtWeightStatus status, Age? age, string explanation) => (Status, Age, Explanation) = (status, age, explanation);

    /// <summary>Whether the weight is reached.</summary>
    public AgeAtWeightStatus Status { get; }

    /// <summary>The age; null unless <see cref="Status"/> is <see cref="AgeAtWeightStatus.Reached"/>.</summary>
    public Age? Age { get; }

    /// <summary>The answer in one sentence.</summary>
    public string Explanation { get; }

    /// <summary>The answer in one sentence.</summary>
    public override string ToString() => Explanation;

    internal static AgeAtWeight Reached(double kilograms, double days) => new(
        AgeAtWeightStatus.Reached,
        Primitives.Age.FromDays(days),
        string.Create(CultureInfo.InvariantCulture, $"{WeightText.Of(kilograms)} at {days:0.0} d."));

    internal static AgeAtWeight AboveMatureWeight(double kilograms, double matureKilograms) => new(
        AgeAtWeightStatus.AboveMatureWeight,
        null,
        string.Create(CultureInfo.InvariantCulture, $"Never {WeightText.Of(kilograms)}: the curve tends to {WeightText.Of(matureKilograms)}."));

    internal static AgeAtWeight BelowHatchWeight(double kilograms) => new(
        AgeAtWeightStatus.BelowHatchWeight,
        null,
        string.Create(CultureInfo.InvariantCulture, $"The curve is above {WeightText.Of(kilograms)} from hatch on."));

    internal static AgeAtWeight BeyondTable(double kilograms, double lastDays) => new(
        AgeAtWeightStatus.BeyondTable,
        null,
        string.Create(CultureInfo.InvariantCulture, $"The table ends at {lastDays:0.##} d below {WeightText.Of(kilograms)}."));

    internal static AgeAtWeight BeforeTable(double kilograms, double firstDays) => new(
        AgeAtWeightStatus.BeforeTable,
        null,
        string.Create(CultureInfo.InvariantCulture, $"The table starts at {firstDays:0.##} d above {WeightText.Of(kilograms)}."));
}
