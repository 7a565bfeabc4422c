using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What a user of a learned prior must mind.</summary>
internal static class LearningCautions
{
    /// <summary>What docs/studies/own-farm.md shows of a slow-down.</summary>
    private static Caution NothingNew => new(
        "past-growth-only",
        "This prior knows no growth but that of the past batches. A sudden slow-down that they did not have (illness, heat, feed) is not covered by it: of simulated batches that slowed down so its 90 % interval held 7 in 10. A later weigh-in does cover it.");

    /// <summary>Why there is no prior of the farm's own, as the end of a sentence.</summary>
    public static string Reason(LearningStatus status) => status switch
    {
        LearningStatus.NoBatches => "there is no past batch of this kind to learn from",
        LearningStatus.NotConverged => "learning from the past batches did not settle",
        _ => "no birds grow as the past batches do (highest gain before hatch, birds that differ by all their weight, or weigh-ins off by half): look at their ages and units",
    };

    /// <summary>The cautions of what was learned from batches in the order of their content.</summary>
    public static IReadOnlyList<Caution> Of(LearnedPrior learned, BatchHistory all, IReadOnlyList<PastRow> rows)
    {
        List<Caution> cautions = [];
        if (learned.Status != LearningStatus.Learned)
        {
            cautions.Add(new("shipped-prior", "This is the shipped prior: " + Reason(learned.Status) + "."));
        }
        else
        {
            cautions.Add(NothingNew);
        }

        if (learned.Status == LearningStatus.Learned && rows.Count < PriorLearning.SpreadBatches)
        {
            cautions.Add(new("few-batches", string.Create(
                CultureInfo.InvariantCulture,
                $"Learned from {CountText.Batches(rows.Count)}: how much batches differ is still mostly what the library assumes.")));
        }

        if (rows.Count > 1 && learned.Kind.Strain is null)
        {
            cautions.Add(new("strain-not-stated", "The strain of these batches is not stated: they are taken to be one. A mixture of strains makes a middle that no batch has."));
        }

        int silent = rows.Count(row => !row.TellsSpread);
        if (silent > 0)
        {
            string taken = learned.CoefficientOfVariation is { } others
                ? string.Create(CultureInfo.InvariantCulture, $"that of the other batches, {100 * others:0.#} %, is taken")
                : string.Create(CultureInfo.InvariantCulture, $"{100 * ErrorModel.AssumedCoefficientOfVariation:0} % is assumed");
            cautions.Add(new("spread-assumed", string.Create(
                CultureInfo.InvariantCulture,
                $"{silent} of {rows.Count} batches have no single birds and no standard deviations; for the spread between their birds {taken}.")));
        }

        int young = all.Sum(batch => batch.WeighIns.Count(weighIn => weighIn.AgeDays < ProjectionData.YoungestDays));
        if (young > 0)
        {
            string unused = all.Count == rows.Count ? "" : string.Create(CultureInfo.InvariantCulture, $" {all.Count - rows.Count} of {all.Count} batches have no other and teach nothing.");
            cautions.Add(ProjectionCautions.TooYoung(young, unused));
        }

        for (int i = 1; i < rows.Count; i++)
        {
            if (MixedGroup.ByContent.Compare(rows[i - 1].Group, rows[i].Group) == 0)
            {
                cautions.Add(new("batch-twice", $"{rows[i - 1].Batch.Name} and {rows[i].Batch.Name} have the same weigh-ins: the same batch twice counts twice."));
            }
        }

        return cautions;
    }
}
