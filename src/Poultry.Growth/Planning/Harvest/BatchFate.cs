using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>One drawn fate of a batch, day by day from placement: what every choice of days of killing is tried on.</summary>
internal readonly ref struct BatchFate
{
    private readonly HeadCountPath birds;
    private readonly ReadOnlySpan<double> kilograms, feedKilograms, feedCost;
    private readonly double survival, even, lost, struckDays;

    public BatchFate(
        HeadCountPath birds,
        DrawnInputs inputs,
        ReadOnlySpan<double> kilograms,
        ReadOnlySpan<double> feedKilograms,
        ReadOnlySpan<double> feedCost,
        (double Share, double AtDays) lost)
    {
        (this.birds, Inputs, survival, even, this.lost, struckDays) = (birds, inputs, inputs.Survival, inputs.Head, lost.Share, lost.AtDays);
        this.kilograms = kilograms;
        this.feedKilograms = feedKilograms;
        this.feedCost = feedCost;
    }

    public DrawnInputs Inputs { get; }

    /// <summary>Birds alive, were none taken away before.</summary>
    public int Head(Age age) => birds.HeadInBatch(age, survival, even, age.Days > struckDays ? 1 - lost : 1);

    /// <summary>Mean live weight, full-fed.</summary>
    public double Kilograms(Age age) => kilograms[DayOf(age)];

    /// <summary>Feed of the batch since placement, and what it cost.</summary>
    public (double Kilograms, double Cost) Feed(Age age) => (feedKilograms[DayOf(age)], feedCost[DayOf(age)]);

    private int DayOf(Age age) => (int)Math.Round((age - birds.AgeAtPlacement).Days);
}
