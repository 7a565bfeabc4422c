using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What one day of killing brings, and how sure that is.</summary>
public sealed class HarvestOption : HarvestResult
{
    internal HarvestOption(BatchPlan plan, HarvestDay day, HarvestDraws draws, Sample sample)
        : base(sample, draws, DaysInShelters(plan, day.Age))
    {
        (Date, Age) = (day.Date, day.Age);
        int count = draws.Head.Length;
        ChanceTooManyBirds = Date.Terms.MostBirds is { } most ? Sample.Share(count, draw => draws.Head[draw] > most) : default;
        ChanceTooFewBirds = Sample.Share(count, draw => draws.Head[draw] < Date.Terms.FewestBirds);
        ChanceDensityMet = DensityMet(plan, count, draw => draws.Head[draw] * draws.MeanKilograms[draw]);
        Packs =
        [
            .. draws.PacksSold.Select((sold, at) => new PackOutlook(plan.Offers[at], sample.Estimate(sold, packs => packs), sample.Estimate(draws.PacksLeft[at], packs => packs))),
        ];
        if (plan.WantedWeights is { } wanted)
        {
            WantedShare share = new(plan, Age, wanted, draws.MeanKilograms);
            ShareWanted = sample.Estimate(
                plan.Growth.ShareInBands(Age, wanted.Low, wanted.High)[1].Share.Fraction, draw => share.At(draws.MeanKilograms[draw]), Probability.FromFraction);
        }
    }

    /// <summary>The day and the plant's terms.</summary>
    public OfferedDate Date { get; }

    /// <summary>How old the birds are.</summary>
    public Age Age { get; }

    /// <summary>The share of birds of the weights that customers want; null where none are stated.</summary>
    public Estimate<Probability>? ShareWanted { get; }

    /// <summary>Packs sold and left, offer by offer; empty for a day that is not offered.</summary>
    public IReadOnlyList<PackOutlook> Packs { get; }

    /// <inheritdoc/>
    public override Probability? ChanceDensityMet { get; }

    /// <inheritdoc/>
    public override Probability ChanceTooManyBirds { get; }

    /// <inheritdoc/>
    public override Probability ChanceTooFewBirds { get; }

    /// <inheritdoc/>
    public override DateOnly DecideBy => Date.DecideBy;

    /// <summary>As in <c>2027-06-08, 57 d: margin 1234.00 (90 %: ...)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Date}, {Age}: margin {Margin}");
}
