using Poultry.Growth.Fitting;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>How well the weight of one farm's new batch at 56 d was told, by the shipped prior and by the farm's own.</summary>
internal sealed record FarmOutcome(bool Converged, int Rounds, double WeighInError, IReadOnlyList<Told> Shipped, IReadOnlyList<Told> Learned)
{
        public static FarmOutcome Of(SimulatedFarm farm)
    {
        LearnedPrior learned = farm.History.Learn(SimulatedFarm.Kind, StudyRows.Shipped);
        return new(
            learned.Status == LearningStatus.Learned,
            learned.Rounds,
            learned.WeighInError,
            [.. LearningCase.Stops.Select(stop => Told.Of(farm, stop, StudyRows.Shipped, 0.02))],
            [.. LearningCase.Stops.Select(stop => Told.Of(farm, stop, learned.Prior, learned.WeighInError))]);
    }
}

/// <summary>The weight at 56 d as told when weighing stops: error of the median and width of the 90 % interval, both as fractions, and the chance that the batch is like the past ones.</summary>
internal sealed record Told(double Error, bool Covered, double Width, double ChanceLikePast)
{
    public static Told Of(SimulatedFarm farm, int stop, GrowthPrior prior, double weighInError)
    {
        NewBatch batch = NewBatch.Of(farm.GroupTo(stop), prior, weighInError)
            ?? throw new InvalidOperationException("A batch has no mode.");
        (double low, double middle, double high) = (batch.LogKilogramsAt(56, 0.05), batch.LogKilogramsAt(56, 0.50), batch.LogKilogramsAt(56, 0.95));
        double truth = farm.LogKilogramsAt56Days;
        return new(Math.Abs(Math.Exp(middle - truth) - 1), low <= truth && truth <= high, Math.Exp(high - low) - 1, batch.ChanceLikePast);
    }
}
