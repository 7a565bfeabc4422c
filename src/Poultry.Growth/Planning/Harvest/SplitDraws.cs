namespace Poultry.Growth.Planning;

/// <summary>What came out of every draw of a batch split over two days.</summary>
internal sealed class SplitDraws(int draws) : HarvestDraws(draws, offers: 0)
{
    public double[] FirstBirds { get; } = new double[draws];

    public double[] FirstKilograms { get; } = new double[draws];

    public double[] SecondKilograms { get; } = new double[draws];

    public double[] FloorKilograms { get; } = new double[draws];

    public override void Set(int draw, in HarvestOutcome outcome, ReadOnlySpan<double> packs)
    {
        base.Set(draw, outcome, packs);
        (FirstBirds[draw], FirstKilograms[draw], SecondKilograms[draw], FloorKilograms[draw]) =
            (outcome.FirstBirds, outcome.FirstKilograms, outcome.SecondKilograms, outcome.FloorKilograms);
    }
}
