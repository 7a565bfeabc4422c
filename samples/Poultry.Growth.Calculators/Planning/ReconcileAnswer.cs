using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>Everything that tables, JSON and chart show of a reconciliation.</summary>
internal sealed class ReconcileAnswer
{
    private ReconcileAnswer(BatchFileReading batch, string file, string sheet, Reconciliation reconciled) =>
        (Suspicions, File, SheetFile, Reconciled) = (batch.Weights!.Suspicions, file, sheet, reconciled);

    public string File { get; }

    public string SheetFile { get; }

    public Reconciliation Reconciled { get; }

    /// <summary>What looks wrong in the weigh-ins that the forecast knew, and that the next batch learns from.</summary>
    public IReadOnlyList<FileSuspicion> Suspicions { get; }

    /// <summary>The history that the batch was added to; null where none was named.</summary>
    public string? History { get; private init; }

    /// <summary>What the history teaches now.</summary>
    public FarmLearning? After { get; private init; }

    /// <summary>What changed by this batch; empty without a history.</summary>
    public IReadOnlyList<LearnedChange> Learned { get; private init; } = [];

    public IReadOnlyList<Caution> Cautions => [.. Reconciled.Cautions.Concat(Reconciled.Indices?.Cautions ?? []).Concat(After?.Cautions ?? []).DistinctBy(caution => caution.Code)];

    public IReadOnlyList<Citation> Sources =>
    [
        .. Reconciliation.Model.Citations
            .Concat(HarvestComparison.Model.Citations)
            .Concat(BatchFigures.Model.Citations)
            .Concat(After is null ? [] : LearnedPrior.Method.Citations.Concat(LearnedSurvival.Method.Citations).Concat(LearnedFeed.Method.Citations).Concat(FarmLesionRate.Model.Citations))
            .DistinctBy(source => source.ToString()),
    ];

    /// <summary>The answer; null, and problems, where there is none. The history is written only when everything else is right.</summary>
    public static ReconcileAnswer? To(
        OptionWords words, string file, string sheetFile, (string? Folder, bool Replace) history, HarvestOptions options, CancellationToken stop)
    {
        // A history that holds batches already was there for the forecast, and goes before the one that the file names.
        bool isThere = history.Folder is { } folder && Directory.Exists(folder) && Directory.EnumerateFiles(folder, "*.csv").Any();
        BatchFileReading batch = BatchFile.Read(file, isThere ? history.Folder : null);
        FileReading<PlantSheet> sheet = PlantSheetFile.Read(sheetFile);
        foreach (string problem in FileProblem.Lines([.. batch.Problems, .. sheet.Problems]))
        {
            words.Refuse(problem);
        }

        if (batch.Problems.Count == 0 && batch.PlanMissing is { } missing)
        {
            words.Refuse(batch.File + ": says too little for a forecast; expected " + missing);
        }

        if (words.Problems.Count > 0 || batch.Plan is not { } plan || sheet.Value is not { } came)
        {
            return null;
        }

        try
        {
            Reconciliation reconciled = Reconciliation.Of(plan, came, options, stop);
            ReconcileAnswer answer = new(batch, file, sheetFile, reconciled);
            return history.Folder is { } target ? answer.Taught(words, batch, target, isThere, history.Replace, options.Level) : answer;
        }
        catch (ArgumentException exception)
        {
            words.Refuse(sheet.File + ": does not fit the batch file: " + LibraryRefusal.Said(exception));
            return null;
        }
    }

    /// <summary>The answer with the batch added to the history; null, and a problem, where that was refused.</summary>
    private ReconcileAnswer? Taught(OptionWords words, BatchFileReading batch, string folder, bool isThere, bool replace, double level)
    {
        FarmBatch finished = Reconciled.ForHistory(batch.Kind!);
        FarmHistory history = isThere ? FarmHistoryFolder.Read(folder).Value! : FarmHistory.Of();
        if (FarmHistoryFolder.Add(folder, finished, replace) is { } problem)
        {
            words.Refuse("--history: " + problem);
            return null;
        }

        FarmLearning From(FarmHistory batches) => batches.Learn(finished.Kind, batch.StatedPrior!, Survival.FastGrowingOutdoor, batch.Feeding!.Conditions.Model);
        (FarmLearning before, FarmLearning after) = (From(history.Without(finished.Name)), From(history.With(finished)));
        return new(batch, File, SheetFile, Reconciled)
        {
            History = folder, After = after, Learned = LearnedChange.Between(before, after, Reconciled.Plan, batch.Harvest!.StatedDressing, Reconciled.Age, level),
        };
    }
}
