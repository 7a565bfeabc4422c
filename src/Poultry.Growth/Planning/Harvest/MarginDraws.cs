namespace Poultry.Growth.Planning;

/// <summary>The margin of every draw for one choice, where nothing else is asked.</summary>
internal class MarginDraws(int draws)
{
    public double[] Margin { get; } = new double[draws];

    /// <summary>Keeps what came out of a draw.</summary>
    public virtual void Set(int draw, in HarvestOutcome outcome, ReadOnlySpan<double> packs) => Margin[draw] = outcome.Margin;
}
