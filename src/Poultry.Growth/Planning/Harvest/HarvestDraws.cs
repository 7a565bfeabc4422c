namespace Poultry.Growth.Planning;

/// <summary>What came out of every draw for one day of killing: one row an outcome, one number a draw.</summary>
internal sealed class HarvestDraws(int draws)
{
    public double[] Head { get; } = new double[draws];

    public double[] MeanKilograms { get; } = new double[draws];

    public double[] FeedKilograms { get; } = new double[draws];

    public double[] SoldKilograms { get; } = new double[draws];

    public double[] Revenue { get; } = new double[draws];

    public double[] Cost { get; } = new double[draws];

    public double[] Margin { get; } = new double[draws];

    public double[] LesionKilograms { get; } = new double[draws];

    /// <summary>The part of the packs asked for that is filled.</summary>
    public double[] Filled { get; } = new double[draws];
}
