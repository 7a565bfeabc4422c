namespace Poultry.Growth.Planning;

/// <summary>What becomes of one batch in the best season.</summary>
public sealed class SeasonChoice
{
    internal SeasonChoice(SeasonBatch batch, SeasonOption? option) => (Batch, Option) = (batch, option);

    /// <summary>The batch.</summary>
    public SeasonBatch Batch { get; }

    /// <summary>How it is raised; null where the season is better without it.</summary>
    public SeasonOption? Option { get; }

    /// <summary>The batch with its way, or that it is not raised; in every culture.</summary>
    public override string ToString() => Batch.Name + ": " + (Option?.ToString() ?? "not raised");
}
