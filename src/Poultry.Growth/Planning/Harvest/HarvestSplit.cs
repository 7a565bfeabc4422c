using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a batch brings that is killed on two of the days offered: a part on the earlier, the rest on the later, with the fees of both.</summary>
/// <remarks>
/// Birds left behind are taken to keep their place among the flock's weights, to die as they would have and to eat by their part of the live weight. What the first
/// catching does to them, and what more room does for them, is nowhere published and not counted.
/// </remarks>
public sealed class HarvestSplit : HarvestResult
{
    private static readonly Caution Repeated = new(
        "repeat-catching",
        "Catching twice frightens the birds that stay: they may pile up, bruise, eat less for days and carry dead tenders. Catch at dusk or in the dark behind a partition, and leave some days between; nothing of it is counted here.");

    private static readonly Caution FeedOffForAll = new(
        "split-feed-off", "Part off the birds that go before their feed is taken: those that stay keep feed and water, and go hungry twice otherwise.");

    internal HarvestSplit(BatchPlan batch, SplitPlan plan, SplitDraws draws, Sample sample, Estimate<Money> gain, Probability chanceBetter)
        : base(sample, draws, DaysInShelters(batch, batch.AgeOn(plan.Second.Date)))
    {
        (First, Second, Share, Birds) = (plan.First, plan.Second, plan.Share, plan.Birds);
        (Gain, ChanceBetter) = (gain, chanceBetter);
        int count = draws.Head.Length;
        FirstHead = sample.Estimate(draws.FirstBirds, birds => birds);
        SecondHead = sample.Estimate(Sample.Mean(draws.Head) - Sample.Mean(draws.FirstBirds), draw => draws.Head[draw] - draws.FirstBirds[draw], birds => birds);
        FirstWeight = sample.Estimate(draws.FirstKilograms, kilograms => Mass.FromKilograms(kilograms));
        SecondWeight = sample.Estimate(draws.SecondKilograms, kilograms => Mass.FromKilograms(kilograms));
        ChanceDensityMet = DensityMet(batch, count, draw => draws.FloorKilograms[draw]);
        ChanceTooManyBirds = Sample.Share(count, draw => draws.FirstBirds[draw] > First.Terms.MostBirds || draws.Head[draw] - draws.FirstBirds[draw] > Second.Terms.MostBirds);
        ChanceTooFewBirds = Sample.Share(count, draw => draws.FirstBirds[draw] < First.Terms.FewestBirds || draws.Head[draw] - draws.FirstBirds[draw] < Second.Terms.FewestBirds);
    }

    /// <summary>The earlier day and its terms.</summary>
    public OfferedDate First { get; }

    /// <summary>The later day and its terms.</summary>
    public OfferedDate Second { get; }

    /// <summary>The part of the birds alive that goes on the earlier day.</summary>
    public Probability Share { get; }

    /// <summary>Which birds these are.</summary>
    public FirstBirds Birds { get; }

    /// <summary>Birds caught on the earlier day.</summary>
    public Estimate<double> FirstHead { get; }

    /// <summary>Birds caught on the later day.</summary>
    public Estimate<double> SecondHead { get; }

    /// <summary>Mean live weight of the birds caught on the earlier day, full-fed.</summary>
    public Estimate<Mass> FirstWeight { get; }

    /// <summary>Mean live weight of the birds caught on the later day, full-fed.</summary>
    public Estimate<Mass> SecondWeight { get; }

    /// <summary>What it brings more than the single day recommended, over the same fates.</summary>
    public Estimate<Money> Gain { get; }

    /// <summary>The chance that it brings more than the single day recommended.</summary>
    public Probability ChanceBetter { get; }

    /// <summary>The chance that the floor's limit is kept until the first birds leave and until the last do; null where no floor is stated.</summary>
    public override Probability? ChanceDensityMet { get; }

    /// <summary>The chance of more birds than the plant takes, on either day.</summary>
    public override Probability ChanceTooManyBirds { get; }

    /// <summary>The chance of fewer birds than the plant opens for, on either day.</summary>
    public override Probability ChanceTooFewBirds { get; }

    /// <summary>Until when the plant must hear of it: the earlier day's deadline.</summary>
    public override DateOnly DecideBy => First.DecideBy < Second.DecideBy ? First.DecideBy : Second.DecideBy;

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<Caution> Cautions => [Repeated, FeedOffForAll];

    /// <summary>As in <c>40 % (the largest) on 2027-06-08, the rest on 2027-06-15: margin 1234.00 (90 %: ...)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Share} ({(Birds == FirstBirds.Largest ? "the largest" : "as caught")}) on {First}, the rest on {Second}: margin {Margin}");
}
