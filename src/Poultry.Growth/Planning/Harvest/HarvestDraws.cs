namespace Poultry.Growth.Planning;

/// <summary>What came out of every draw for one choice: one row an outcome, one number a draw.</summary>
/// <param name="draws">How many.</param>
/// <param name="offers">Kinds of pack that are kept apart; 0 where nobody asks for them.</param>
internal class HarvestDraws(int draws, int offers) : MarginDraws(draws)
{
    /// <summary>Packs of each offer sold at their price, draw by draw.</summary>
    public double[][] PacksSold { get; } = [.. Enumerable.Range(0, offers).Select(_ => new double[draws])];

    /// <summary>Packs of each offer left, draw by draw.</summary>
    public double[][] PacksLeft { get; } = [.. Enumerable.Range(0, offers).Select(_ => new double[draws])];

    public double[] Head { get; } = new double[draws];

    public double[] MeanKilograms { get; } = new double[draws];

    public double[] FeedKilograms { get; } = new double[draws];

    public double[] SoldKilograms { get; } = new double[draws];

    public double[] Revenue { get; } = new double[draws];

    public double[] Cost { get; } = new double[draws];

    public double[] LesionKilograms { get; } = new double[draws];

    public double[] Filled { get; } = new double[draws];

    public double[] DeadOnArrival { get; } = new double[draws];

    public double[] Condemned { get; } = new double[draws];

    public override void Set(int draw, in HarvestOutcome outcome, ReadOnlySpan<double> packs)
    {
        base.Set(draw, outcome, packs);
        (Head[draw], MeanKilograms[draw], FeedKilograms[draw]) = (outcome.Head, outcome.MeanKilograms, outcome.FeedKilograms);
        (SoldKilograms[draw], Revenue[draw], Cost[draw], Filled[draw]) = (outcome.SoldKilograms, outcome.Revenue, outcome.Cost, outcome.Filled);
        (LesionKilograms[draw], DeadOnArrival[draw], Condemned[draw]) = (outcome.Plant.LesionKilograms, outcome.Plant.Dead, outcome.Plant.Condemned);
        ReadOnlySpan<double> sales = packs[(packs.Length / 2)..];
        for (int offer = 0; offer < PacksSold.Length; offer++)
        {
            (PacksSold[offer][draw], PacksLeft[offer][draw]) = (sales[2 * offer], sales[(2 * offer) + 1]);
        }
    }
}
