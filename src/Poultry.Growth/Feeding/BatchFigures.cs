using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>The trade's figures of a batch, each with its definition: two farms that compare them mean the same.</summary>
/// <remarks>Figures that need what was not written down are null.</remarks>
public sealed class BatchFigures
{
    private readonly double meanKilograms, days;

    private BatchFigures(FinishedBatch batch)
    {
        Batch = batch;
        meanKilograms = batch.LiveWeight.Kilograms / batch.Sold;
        days = batch.AgeAtSale.Days;
        ByLiveWeight = FeedConversion.Of(batch.Feed, batch.LiveWeight, FeedConversionBasis.LiveWeight);
        if (batch.ChickWeight is { } chick)
        {
            double gain = batch.LiveWeight.Kilograms - (batch.Placed * chick.Kilograms);
            ByGain = gain > 0 ? FeedConversion.Of(batch.Feed, Mass.FromKilograms(gain), FeedConversionBasis.Gain) : null;
        }

        if (batch.DeadWeight is { } dead)
        {
            MortalityAdjusted = FeedConversion.Of(batch.Feed, batch.LiveWeight + dead, FeedConversionBasis.MortalityAdjusted);
        }

        WeightCorrected = [.. WeightCorrection.All.Select(rule => rule.Correct(ByLiveWeight, MeanLiveWeight))];
    }

    /// <summary>The definitions.</summary>
    public static ModelInfo Model { get; } = new(
        "batch-figures",
        "Figures of a finished batch",
        "livability = 100 N1/N0; ADG = (BWf - BW0)/D, BWf/D where BW0 is unknown; FCR live = F/(N1 BWf), gain = F/(N1 BWf - N0 BW0), mortality-adjusted = F/(N1 BWf + Wd); caloric = FCR live x ME; PEF = 100 livability BWf/(D FCR live); EBI = ADG livability/(10 FCR live)",
        [
            new ModelSymbol("N0", "chicks placed", "birds"),
            new ModelSymbol("N1", "birds sold", "birds"),
            new ModelSymbol("BWf", "mean live weight sold; kg in PEF, g in ADG", "kg"),
            new ModelSymbol("BW0", "mean weight of a chick", "kg"),
            new ModelSymbol("D", "age at sale", "d"),
            new ModelSymbol("F", "feed eaten", "kg"),
            new ModelSymbol("Wd", "weight of dead and culled birds together", "kg"),
            new ModelSymbol("ADG", "average daily gain", "g/d"),
            new ModelSymbol("FCR", "feed conversion", "-"),
            new ModelSymbol("ME", "metabolizable energy of the feed", "kcal/kg"),
            new ModelSymbol("PEF", "production efficiency factor, also called EPEF", "-"),
            new ModelSymbol("EBI", "broiler index", "-"),
        ],
        [
            new Citation("Trade", "Custom of the trade", HowKnown.CommonPractice, "definitions of conversion, livability, gain and broiler index"),
            new Citation("Shane", "Shane, in the trade press, with worked figures", HowKnown.Secondary, "caloric conversion; production efficiency factor 212 from 1.85 kg, 95 %, 44 d, 1.88"),
        ],
        "Definitions, exact by themselves; others are in use. Conversion by gain and by live weight differ by about the chick's share of the final weight (2 %). Some take the chicks off the mortality-adjusted denominator, some divide by chicks placed. PEF and EBI are alike only where gain is BWf/D.",
        HowKnown.CommonPractice);

    /// <summary>The record that they were worked out from.</summary>
    public FinishedBatch Batch { get; }

    /// <summary>Birds sold of chicks placed.</summary>
    public Probability Livability => Probability.FromFraction((double)Batch.Sold / Batch.Placed);

    /// <summary>Mean live weight sold.</summary>
    public Mass MeanLiveWeight => Mass.FromKilograms(meanKilograms);

    /// <summary>Gain from hatch to sale a day; where chicks were not weighed, live weight over age, which is 1 to 2 % more.</summary>
    public MassFlow AverageDailyGain => MassFlow.FromGramsPerDay(GainGramsPerDay);

    /// <summary>Feed over live weight sold.</summary>
    public FeedConversion ByLiveWeight { get; }

    /// <summary>Feed over live weight sold less that of the chicks placed; null where chicks were not weighed, or nothing was gained.</summary>
    public FeedConversion? ByGain { get; }

    /// <summary>Feed over live weight sold and dead; null where dead birds were not weighed.</summary>
    public FeedConversion? MortalityAdjusted { get; }

    /// <summary>Feed over live weight sold, moved to a reference weight, by each rule.</summary>
    public IReadOnlyList<WeightCorrectedConversion> WeightCorrected { get; }

    /// <summary>Energy for each unit of live weight sold (6016 kcal/kg is 2.729 Mcal/lb); null where the energy of the feed is not known.</summary>
    public SpecificEnergy? CaloricConversion => Batch.DietEnergy is { } diet ? diet * ByLiveWeight.Ratio : null;

    /// <summary>Livability in % times live weight in kg over age in days and conversion by live weight, times 100: a pure number, higher is better.</summary>
    public double ProductionEfficiencyFactor => 100 * Livability.Percent * meanKilograms / (days * ByLiveWeight.Ratio);

    /// <summary>Gain in g/d times livability in % over ten times the conversion by live weight: a pure number, higher is better.</summary>
    public double BroilerIndex => GainGramsPerDay * Livability.Percent / (ByLiveWeight.Ratio * 10);

    /// <summary>What to mind in comparing them.</summary>
    public IReadOnlyList<Caution> Cautions =>
    [
        .. WeightCorrected.Select(corrected => corrected.Caution).OfType<Caution>(),
        .. Batch.ChickWeight is null ? [new Caution("chick-weight-unknown", "Chicks were not weighed: average daily gain is live weight over age, 1 to 2 % too high, and so is the broiler index.")] : Array.Empty<Caution>(),
    ];

    private double GainGramsPerDay => 1000 * (meanKilograms - (Batch.ChickWeight?.Kilograms ?? 0)) / days;

    /// <summary>Works them out.</summary>
    public static BatchFigures Of(FinishedBatch batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return new BatchFigures(batch);
    }

    /// <summary>As in <c>96 % sold at 42 d, 2.5 kg (5.51 lb) each, 59.5 g/d, 1.600 (feed over live weight sold)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Livability} sold at {Batch.AgeAtSale}, {WeightText.Of(meanKilograms)} each, {GainGramsPerDay:0.#} g/d, {ByLiveWeight}");
}
