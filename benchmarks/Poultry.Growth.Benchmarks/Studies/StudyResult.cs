using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>A row of the study, worked out.</summary>
internal sealed class StudyResult
{
    /// <summary>The ages projected to, d.</summary>
    public static readonly double[] Targets = [49, 56, 63];

    /// <summary>The weight whose age is projected.</summary>
    private const double TargetKilograms = 2.5;

    private const double BookedDays = 56;

    private readonly StudyCell[][] cells;

    private StudyResult(StudyRow row, int batches)
    {
        Row = row;
        cells = [.. row.Stops.Select(_ => Targets.Select(_ => new StudyCell(batches)).ToArray())];
        Ages = [.. row.Stops.Select(_ => new StudyCell(batches))];
        Disagreements = new int[row.Stops.Count];
    }

    public StudyRow Row { get; }

    /// <summary>Age at 2.5 kg, by stop.</summary>
    public IReadOnlyList<StudyCell> Ages { get; }

    /// <summary>How many batches were told that prior and data disagree, by stop.</summary>
    public int[] Disagreements { get; }

    /// <summary>Cases to be worked out again by a test.</summary>
    public IReadOnlyList<string> FirstCases { get; private set; } = [];

    public StudyCell At(int stop, double targetDays) => cells[stop][Array.IndexOf(Targets, targetDays)];

    public static StudyResult Of(StudyRow row, long seed, int batches)
    {
        StudyResult result = new(row, batches);
        Parallel.For(0, batches, batch => result.Work(seed, batch));
        result.FirstCases = [.. Enumerable.Range(0, row.Stops.Count).Select(stop => result.Case(seed, stop))];
        return result;
    }

    public static (double Low, double Median, double High) Bounds(Projection projection, double days)
    {
        Evidence.Estimate<Mass> mean = projection.MeanAt(Age.FromDays(days));
        return (mean.Interval.Low!.Value.Kilograms, mean.Value.Kilograms, mean.Interval.High!.Value.Kilograms);
    }

    public static Projection Project(StudyRow row, SimulatedBatch batch, int stop, ProjectionOptions options)
    {
        double last = stop == 0 ? double.NegativeInfinity : row.Days[stop - 1] + (row.Irregular ? 3 : 0);
        WeighIn[] seen = [.. batch.WeighIns.Where(weighIn => weighIn.Age.Days <= last)];
        return seen.Length == 0 ? Projection.Of(row.Prior, options) : Projection.Of(WeighInSeries.Of(seen), row.Prior, options);
    }

    private void Work(long seed, int number)
    {
        SimulatedBatch batch = SimulatedBatch.Draw(Row, seed, number);
        for (int stop = 0; stop < Row.Stops.Count; stop++)
        {
            Projection projection = Project(Row, batch, Row.Stops[stop], ProjectionOptions.Default);
            for (int target = 0; target < Targets.Length; target++)
            {
                (double low, double median, double high) = Bounds(projection, Targets[target]);
                cells[stop][target].Record(number, low, median, high, batch.Kilograms(Targets[target]));
            }

            StudyCell booked = At(stop, BookedDays);
            double median56 = Bounds(projection, BookedDays).Median;
            double asked = median56 * (0.85 + (0.30 * new Numerics.RandomStream(seed, number, 13).NextUniform()));
            Probability chance = projection.ChanceMeanReaches(Mass.FromKilograms(asked), Age.FromDays(BookedDays));
            booked.RecordChance(number, chance.Fraction, batch.Kilograms(BookedDays) >= asked);
            RecordAge(projection, batch, stop, number);
            if (projection.Disagreement is not null)
            {
                Interlocked.Increment(ref Disagreements[stop]);
            }
        }
    }

    private void RecordAge(Projection projection, SimulatedBatch batch, int stop, int number)
    {
        double truth = 1;
        while (truth < 200 && batch.Kilograms(truth) < TargetKilograms)
        {
            truth += 0.05;
        }

        Evidence.Estimate<Age>? age = projection.AgeAt(Mass.FromKilograms(TargetKilograms));
        Ages[stop].Record(number, age?.Interval.Low?.Days ?? 0, age?.Value.Days ?? 400, age?.Interval.High?.Days ?? double.PositiveInfinity, truth);
    }

    private string Case(long seed, int stop)
    {
        SimulatedBatch batch = SimulatedBatch.Draw(Row, seed, 0);
        Projection projection = Project(Row, batch, Row.Stops[stop], ProjectionOptions.Default);
        IEnumerable<string> weighIns = (projection.WeighIns ?? Enumerable.Empty<WeighIn>()).Select(weighIn => string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{weighIn.Age.Days:R}:{weighIn.BirdsWeighed}:{weighIn.MeanWeight.Kilograms:R}:{weighIn.StandardDeviation!.Value.Kilograms:R}"));
        IEnumerable<string> bounds = Targets.Select(days => Bounds(projection, days)).Select(b => string.Create(
            System.Globalization.CultureInfo.InvariantCulture, $"{b.Low:G9},{b.Median:G9},{b.High:G9}"));
        return $"\"{Row.Name}\"".Replace(",", ";", StringComparison.Ordinal) + "," + Row.PriorName.Replace(", ", " ", StringComparison.Ordinal) + ","
            + string.Join(' ', weighIns) + "," + string.Join(',', bounds);
    }
}
