using System.Globalization;
using Poultry.Growth.Fitting;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>What came of reading a batch file and the files that it names: its sections, or every problem at once.</summary>
public sealed class BatchFileReading
{
    internal BatchFileReading(string file) => File = file;

    /// <summary>The file, as problems call it.</summary>
    public string File { get; }

    /// <summary>The birds; null where there is any problem.</summary>
    public BatchFlock? Flock { get; internal init; }

    /// <summary>Their weights; null where there is any problem.</summary>
    public BatchWeights? Weights { get; internal init; }

    /// <summary>Their feed; null where there is any problem.</summary>
    public BatchFeeding? Feeding { get; internal init; }

    /// <summary>Plant, packs and costs; null where there is any problem, or the file names no plant.</summary>
    public BatchHarvest? Harvest { get; internal init; }

    /// <summary>The plan that the file makes; null where something for it is missing, which <see cref="PlanMissing"/> says.</summary>
    public BatchPlan? Plan => PlanMissing is null ? MadePlan() : null;

    /// <summary>What a plan needs and the file does not say; null where nothing is missing.</summary>
    public string? PlanMissing => Problems.Count > 0 ? "the file has problems"
        : Harvest is null ? "sections plant and selling: days offered, dressing, packs and prices"
        : Flock?.Placed is null ? "placed: the day the chicks come"
        : Weights?.Prior is null ? "weights with a prior or weigh-ins: a table says nothing about how sure it is"
        : null;

    /// <summary>Everything that cannot be read, file by file in the order of each; empty where the sections are there.</summary>
    public IReadOnlyList<FileProblem> Problems { get; internal init; } = [];

    /// <summary>One line, as in <c>batch.json: 3 problems</c>, in every culture.</summary>
    public override string ToString() => File + ": "
        + (Problems.Count == 0 ? Flock!.Name ?? "a batch" : string.Create(CultureInfo.InvariantCulture, $"{Problems.Count} problem") + (Problems.Count == 1 ? "" : "s"));

    private BatchPlan MadePlan() => new()
    {
        Name = Flock!.Name ?? "batch",
        Placed = Flock.Placed!.Value,
        Birds = Flock.HeadCount,
        Growth = Weights!.WeighIns?.Series is { } weighed ? Projection.Of(weighed, Weights.Prior!) : Projection.Of(Weights.Prior!),
        Feeds = Feeding!.Plan,
        Feeding = Feeding.Conditions,
        FeedRecord = Feeding.Record,
        Plant = Harvest!.Plant,
        Order = Harvest.Order,
        Offers = Harvest.Offers,
        Cutting = Harvest.Cutting,
        Dates = Harvest.Dates,
        Costs = Harvest.Costs,
        Prices = Harvest.Prices,
        Shelters = Harvest.Shelters,
        MoveOut = Feeding.Conditions.Temperatures.MoveOut ?? Age.FromDays(21),
        WantedWeights = Harvest.WantedWeights,
        Deboned = Harvest.Deboned,
    };
}
