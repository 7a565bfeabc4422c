using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Files;

/// <summary>The field <c>history</c> of a batch file: the farm's finished batches, from which growth, losses, feed, dressing and dead tenders are learned.</summary>
internal static class BatchHistorySection
{
    /// <summary>The birds and their weights, by what the farm's own batches teach; the rest goes into the context. What the file states by itself stays as stated.</summary>
    public static (BatchFlock? Flock, BatchWeights Weights) Read(
        JsonSection file, string? given, BatchFlock? flock, BatchWeights weights, BatchFeeding? feeding, BatchContext context)
    {
        string? named = file.Text("history", expected: "the name of a folder with the farm's finished batches beside this file");
        if (flock is not null && weights.WeighIns?.Kind is { } weighed && (Differ(flock.Strain, weighed.Strain) || Differ(flock.System, weighed.System)))
        {
            file.Refuse("is of another strain or system than its weigh-ins say", weighed.ToString());
        }

        if ((given ?? named) is not { } folder || flock is null || weights.Prior is null || feeding is null)
        {
            return (flock, weights);
        }

        if (weights.PriorFolder is not null)
        {
            file.Refuse("names past batches twice: history, and a folder as prior", "one of them: history teaches growth too");
            return (flock, weights);
        }

        FileReading<FarmHistory> reading = FarmHistoryFolder.Read(given ?? context.Beside(folder));
        context.Add(reading.Problems);
        if (reading.Value is not { } history)
        {
            return (flock, weights);
        }

        HeadCountPath birds = flock.HeadCount;
        FarmLearning farm = (flock.Name is { } own ? history.Without(own) : history).Learn(KindOf(flock, weights), weights.Prior, Survival.FastGrowingOutdoor, feeding.Conditions.Model);
        context.Farm = farm;
        return (
            birds.Thereafter == Survival.FastGrowingOutdoor ? flock.With(HeadCountPath.Recorded(birds.Placed, birds.AgeAtPlacement, birds.Deaths, farm.Survival.Survival)) : flock,
            new() { WeighIns = weights.WeighIns, Prior = farm.Growth.Prior });
    }

    /// <summary>Strain, system and sex: as the batch file says, else as its weigh-ins do.</summary>
    public static BatchKind KindOf(BatchFlock flock, BatchWeights weights) => BatchKind.Of(
        flock.Strain ?? weights.WeighIns?.Kind?.Strain, flock.System ?? weights.WeighIns?.Kind?.System, flock.Sex);

    private static bool Differ(string? one, string? other) => one is not null && other is not null && !one.Trim().Equals(other.Trim(), StringComparison.OrdinalIgnoreCase);
}
