using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>Where a part of a plan comes from: shipped with the library, stated in the file, or learned from the farm's own batches.</summary>
public sealed class PlanOrigin
{
    private PlanOrigin(string part, string source) => (Part, Source) = (part, source);

    /// <summary>As in <c>losses</c>.</summary>
    public string Part { get; }

    /// <summary>As in <c>3 own batches: 1.42 times the shipped losses</c>.</summary>
    public string Source { get; }

    /// <summary>As in <c>losses: 3 own batches</c>.</summary>
    public override string ToString() => Part + ": " + Source;

    internal static IReadOnlyList<PlanOrigin> Of(BatchPlan plan)
    {
        Survival survival = plan.Birds.Thereafter;
        FarmLearning? farm = plan.Farm;
        return
        [
            new("growth", plan.Growth.Prior.Model.Name + (plan.Growth.WeighIns is { } weighed ? ", and " + weighed : "")),
            new("losses", farm is { Survival: { Batches.Count: > 0 } own } && survival == own.Survival ? own.ToString() : survival.Model.Name),
            new("feed", plan.FeedRecord is { } record ? plan.Feeding.Model + ", and " + record : farm?.Feed is { } fed ? fed.ToString() : plan.Feeding.Model.ToString()!),
            new("dressing", plan.Plant.Dressing.Name + (farm?.Dressing is { } dressed && plan.Plant.Dressing.IncludesCondemned ? ": " + CountText.OwnBatches(dressed.Batches) : "")),
            new("dead tenders", plan.Lesions == PlanningRisk.Published ? plan.Lesions.Model.Name : farm?.Lesions?.ToString() ?? plan.Lesions.Model.Name),
        ];
    }
}
