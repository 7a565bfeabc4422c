using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What one day of killing brings, and how sure that is.</summary>
public sealed class HarvestOption
{
    /// <summary>The worst part of the draws that a bad case is the mean of.</summary>
    private const double WorstPart = 0.1;

    private const int UsualCutSheetDays = 10;

    internal HarvestOption(BatchPlan plan, HarvestDay day, HarvestDraws draws, double level)
    {
        (Date, Age) = (day.Date, day.Age);
        IReadOnlyList<Caution> none = [];
        Head = Sample.Estimate(draws.Head, level, birds => birds, none);
        MeanWeight = Sample.Estimate(draws.MeanKilograms, level, kilograms => Mass.FromKilograms(kilograms), none);
        Feed = Sample.Estimate(draws.FeedKilograms, level, kilograms => Mass.FromKilograms(kilograms), none);
        Sold = Sample.Estimate(draws.SoldKilograms, level, kilograms => Mass.FromKilograms(kilograms), none);
        LesionLoss = Sample.Estimate(draws.LesionKilograms, level, kilograms => Mass.FromKilograms(kilograms), none);
        Revenue = Sample.Estimate(draws.Revenue, level, Money.Of, none);
        Cost = Sample.Estimate(draws.Cost, level, Money.Of, none);
        Margin = Sample.Estimate(draws.Margin, level, Money.Of, none);
        BadCase = Money.Of(Sample.MeanOfWorst(draws.Margin, WorstPart));
        OrdersFilled = Probability.FromFraction(Math.Clamp(Sample.Mean(draws.Filled), 0, 1));
        ChanceOfLoss = Probability.FromFraction(Sample.Share(draws.Margin, margin => margin < 0));
        ChanceTooManyBirds = Probability.FromFraction(Date.Terms.MostBirds is { } most ? Sample.Share(draws.Head, birds => birds > most) : 0);
        ChanceTooFewBirds = Probability.FromFraction(Sample.Share(draws.Head, birds => birds < Date.Terms.FewestBirds));
        ShareWanted = plan.WantedWeights is { } wanted ? plan.Growth.ShareInBands(Age, wanted.Low, wanted.High)[1].Share : null;
        double kept = Math.Max(1, (Age - plan.MoveOut).Days + (plan.Shelters?.Rest.Days ?? 0));
        ShelterDays = Duration.FromDays(kept);
        MarginPerShelterDay = Money.Of(Margin.Value.Amount / kept);
        if (plan.Shelters is { } shelters)
        {
            double limit = shelters.Limit.KilogramsPerSquareMeter * shelters.Floor.SquareMeters;
            int within = 0;
            for (int i = 0; i < draws.Head.Length; i++)
            {
                within += draws.Head[i] * draws.MeanKilograms[i] <= limit ? 1 : 0;
            }

            ChanceDensityMet = Probability.FromFraction((double)within / draws.Head.Length);
        }

        DecideBy = Date.ChangeUntil ?? Date.Date.AddDays(-UsualCutSheetDays);
    }

    /// <summary>The day and the plant's terms.</summary>
    public OfferedDate Date { get; }

    /// <summary>How old the birds are.</summary>
    public Age Age { get; }

    /// <summary>Birds alive that morning.</summary>
    public Estimate<double> Head { get; }

    /// <summary>Their mean live weight, full-fed.</summary>
    public Estimate<Mass> MeanWeight { get; }

    /// <summary>The share of birds of the weights that customers want; null where none are stated.</summary>
    public Probability? ShareWanted { get; }

    /// <summary>Feed of the batch from placement to that day.</summary>
    public Estimate<Mass> Feed { get; }

    /// <summary>Meat sold, at once or out of the freezer.</summary>
    public Estimate<Mass> Sold { get; }

    /// <summary>Money for it.</summary>
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

    /// <summary>The mean margin for each bird of the mean head.</summary>
    public Money MarginPerBird => Money.Of(Margin.Value.Amount / Math.Max(1, Head.Value));

    /// <summary>The mean margin for each kilogram of meat sold; null where none is.</summary>
    public Money? MarginPerKilogram => Sold.Value.Kilograms > 0 ? Money.Of(Margin.Value.Amount / Sold.Value.Kilograms) : null;

    /// <summary>How long the shelters are taken: from moving out to catching, and their rest.</summary>
    public Duration ShelterDays { get; }

    /// <summary>The mean margin for each of those days. It decides only where another batch waits for the shelters.</summary>
    public Money MarginPerShelterDay { get; }

    /// <summary>The chance that the floor's limit is kept; null where no floor is stated.</summary>
    public Probability? ChanceDensityMet { get; }

    /// <summary>Meat lost to dead tenders at the plant.</summary>
    public Estimate<Mass> LesionLoss { get; }

    /// <summary>The chance of more birds than the plant takes.</summary>
    public Probability ChanceTooManyBirds { get; }

    /// <summary>The chance of fewer birds than the plant opens for.</summary>
    public Probability ChanceTooFewBirds { get; }

    /// <summary>Until when the plant must hear of a change: its own last day, or ten days before (common practice).</summary>
    public DateOnly DecideBy { get; }

    /// <summary>As in <c>2027-06-08, 57 d: margin 1234.00 (90 %: ...)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Date}, {Age}: margin {Margin}");
}
