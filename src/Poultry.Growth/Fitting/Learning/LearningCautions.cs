using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What a user of a learned prior must mind.</summary>
internal static class LearningCautions
{
    /// <summary>Why there is no prior of the farm's own, as the end of a sentence.</summary>
    public static string Reason(LearningStatus status) => status switch
    {
        LearningStatus.NoBatches => "there is no past batch of this kind to learn from",
        LearningStatus.NotConverged => "learning from the past batches did not settle",
        _ => "the past batches have their highest gain before hatch, which no birds have: look at their ages",
    };

    /// <summary>The cautions of what was learned from batches in the order of their content.</summary>
    public static IReadOnlyList<Caution> Of(LearnedPrior learned, IReadOnlyList<(PastBatch Batch, MixedGroup Group)> rows)
    {
        List<Caution> cautions = [];
        if (learned.Status != LearningStatus.Learned)
        {
            cautions.Add(new("shipped-prior", "This is the shipped prior: " + Reason(learned.Status) + "."));
        }
        else if (rows.Count < PriorLearning.SpreadBatches)
        {
            cautions.Add(new("few-batches", string.Create(
                CultureInfo.InvariantCulture,
                $"Learned from {rows.Count} {(rows.Count == 1 ? "batch" : "batches")}: how much batches differ is still mostly what the library assumes.")));
        }

        if (rows.Count > 1 && learned.Kind.Strain is null)
        {
            cautions.Add(new("strain-not-stated", "The strain of these batches is not stated: they are taken to be one. A mixture of strains makes a middle that no batch has."));
        }

        int assumed = rows.Count(row => row.Batch.WeighIns.PooledCoefficientOfVariation is null);
        if (assumed > 0)
        {
            cautions.Add(new("spread-assumed", string.Create(
                CultureInfo.InvariantCulture,
                $"{assumed} of {rows.Count} batches have no single birds and no standard deviations: a spread of {100 * ErrorModel.AssumedCoefficientOfVariation:0} % between birds is assumed.")));
        }

        if (learned.Kind.Sex == Sex.Mixed && rows.Any(row => row.Batch.WeighIns.Any(weighIn => weighIn.Sex != Sex.Mixed)))
        {
            cautions.Add(new("sexes-weighed-apart", "Some weigh-ins are of one sex; each is taken for the mean of both."));
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
