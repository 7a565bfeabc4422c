using Poultry.Growth.Feeding;

namespace Poultry.Growth.Files;

/// <summary>The feeds of a batch file, how the birds are kept, and what they ate so far.</summary>
public sealed class BatchFeeding
{
    internal BatchFeeding()
    {
    }

    /// <summary>The feeds; <see cref="FeedingPlan.UsualDiets"/> where the file does not say.</summary>
    public required FeedingPlan Plan { get; init; }

    /// <summary>Temperatures, waste, pasture and model.</summary>
    public required FeedingConditions Conditions { get; init; }

    /// <summary>What the batch ate so far; null where the file names no record, or what was left was never measured.</summary>
    public FeedRecord? Record { get; internal init; }

    /// <summary>Feeds and conditions in one line, in every culture.</summary>
    public override string ToString() => Plan + "; " + Conditions;
}
