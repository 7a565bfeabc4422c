using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a choice of days of killing brings, and how sure that is.</summary>
public abstract class HarvestResult
{
    /// <summary>The worst part of the draws that a bad case is the mean of.</summary>
    internal const double WorstPart = 0.1;

    /// <summary>What the arithmetic of sums and shares may lose.</summary>
    private const double Rounding = 1e-9;

    private protected HarvestResult(Sample sample, HarvestDraws draws, double shelterDays)
    {
        int count = draws.Margin.Length;
        Head = sample.Estimate(draws.Head, birds => birds);
        MeanWeight = sample.Estimate(draws.MeanKilograms, kilograms => Mass.FromKilograms(kilograms));
        Feed = sample.Estimate(draws.FeedKilograms, kilograms => Mass.FromKilograms(kilograms));
        Sold = sample.Estimate(draws.SoldKilograms, kilograms => Mass.FromKilograms(kilograms));
        DeadOnArrival = sample.Estimate(draws.DeadOnArrival, birds => birds);
        Condemned = sample.Estimate(draws.Condemned, birds => birds);
        LesionLoss = sample.Estimate(draws.LesionKilograms, kilograms => Mass.FromKilograms(kilograms));
        Revenue = sample.Estimate(draws.Revenue, Money.Of);
        Cost = sample.Estimate(draws.Cost, Money.Of);
        Margin = sample.Estimate(draws.Margin, Money.Of);
        BadCase = Money.Of(sample.MeanOfWorst(draws.Margin, WorstPart));
        OrdersFilled = Probability.FromFraction(Math.Min(1, Sample.Mean(draws.Filled)));
        ChanceOrdersMissed = Sample.Share(count, draw => draws.Filled[draw] < 1 - Rounding);
        ChanceOfLoss = Sample.Share(count, draw => draws.Margin[draw] < 0);
        MarginPerBird = sample.Estimate(Margin.Value.Amount / Math.Max(1, Head.Value), draw => draws.Margin[draw] / Math.Max(1, draws.Head[draw]), Money.Of);
        if (Sold.Value.Kilograms > 0 && Array.TrueForAll(draws.SoldKilograms, kilograms => kilograms > 0))
        {
            MarginPerKilogram = sample.Estimate(Margin.Value.Amount / Sold.Value.Kilograms, draw => draws.Margin[draw] / draws.SoldKilograms[draw], Money.Of);
            BreakEvenPrice = sample.Estimate(
                Cost.Value.Amount / Sold.Value.Kilograms, draw => draws.Cost[draw] / draws.SoldKilograms[draw], UnitPrice.FromAmountPerKilogram);
        }

        ShelterDays = Duration.FromDays(shelterDays);
        MarginPerShelterDay = sample.Estimate(Margin.Value.Amount / shelterDays, draw => draws.Margin[draw] / shelterDays, Money.Of);
    }

    /// <summary>Birds alive on the morning that they are caught.</summary>
    public Estimate<double> Head { get; }

    /// <summary>Their mean live weight, full-fed.</summary>
    public Estimate<Mass> MeanWeight { get; }

    /// <summary>Feed of the batch from placement on.</summary>
    public Estimate<Mass> Feed { get; }

    /// <summary>Meat sold, at once or out of the freezer.</summary>
    public Estimate<Mass> Sold { get; }

    /// <summary>Birds dead on arrival at the plant.</summary>
    public Estimate<double> DeadOnArrival { get; }

    /// <summary>Birds condemned, of those delivered alive.</summary>
    public Estimate<double> Condemned { get; }

    /// <summary>Meat lost to dead tenders at the plant.</summary>
    public Estimate<Mass> LesionLoss { get; }

    /// <summary>Money for the meat sold.</summary>
    public Estimate<Money> Revenue { get; }

    /// <summary>What the batch has cost by then, chicks and plant included.</summary>
    public Estimate<Money> Cost { get; }

    /// <summary>Revenue less cost.</summary>
    public Estimate<Money> Margin { get; }

    /// <summary>The mean margin of the worst tenth of the draws.</summary>
    public Money BadCase { get; }

    /// <summary>The chance that the batch loses money.</summary>
    public Probability ChanceOfLoss { get; }

    /// <summary>Packs sold of the packs asked for, on average; 100 % where no demand has a limit.</summary>
    public Probability OrdersFilled { get; }

    /// <summary>
    /// The chance that some pack that is asked for is not there: near certain where many kinds are offered and cutting gives the pieces of a bird together; 0 where no demand has a limit.
    /// </summary>
    public Probability ChanceOrdersMissed { get; }

    /// <summary>The mean margin for each bird of the mean head; the range is that of each fate's own.</summary>
    public Estimate<Money> MarginPerBird { get; }

    /// <summary>The mean margin for each kilogram of the mean weight sold; the range is that of each fate's own. Null where nothing may be sold.</summary>
    public Estimate<Money>? MarginPerKilogram { get; }

    /// <summary>What a kilogram of meat must bring on average for the batch to pay; the range is that of each fate's own. Null where nothing may be sold.</summary>
    public Estimate<UnitPrice>? BreakEvenPrice { get; }

    /// <summary>How long the shelters are taken: from moving out to the last catching, and their rest.</summary>
    public Duration ShelterDays { get; }

    /// <summary>The margin for each of those days. It decides only where another batch waits for the shelters.</summary>
    public Estimate<Money> MarginPerShelterDay { get; }

    /// <summary>The chance that the floor's limit is kept; null where no floor is stated.</summary>
    public abstract Probability? ChanceDensityMet { get; }

    /// <summary>The chance of more birds than the plant takes.</summary>
    public abstract Probability ChanceTooManyBirds { get; }

    /// <summary>The chance of fewer birds than the plant opens for.</summary>
    public abstract Probability ChanceTooFewBirds { get; }

    /// <summary>Until when the plant must hear of a change: its own last day, or ten days before (common practice).</summary>
    public abstract DateOnly DecideBy { get; }

    /// <summary>Days that the shelters are taken by birds that leave at an age.</summary>
    private protected static double DaysInShelters(BatchPlan plan, Age last) => Math.Max(1, (last - plan.MoveOut).Days + (plan.Shelters?.Rest.Days ?? 0));

    /// <summary>The chance that so many kilograms of birds keep the floor's limit.</summary>
    private protected static Probability? DensityMet(BatchPlan plan, int draws, Func<int, double> kilograms)
    {
        if (plan.Shelters is not { } shelters)
        {
            return null;
        }

        double limit = shelters.Limit.KilogramsPerSquareMeter * shelters.Floor.SquareMeters;
        return Sample.Share(draws, draw => kilograms(draw) <= limit);
    }
}
