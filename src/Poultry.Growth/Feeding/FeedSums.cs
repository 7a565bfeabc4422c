using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Feed by day summed up for a bird and for the batch, with its errors and the farm's factor.</summary>
internal sealed class FeedSums
{
    private readonly FeedPath path;
    private readonly WeightPath weights;
    private readonly CurveError error;
    private readonly HeadCountPath heads;
    private readonly FeedingConditions conditions;
    private readonly double level, normal;
    private readonly FeedParts[] parts;
    private readonly double[] birds, cumulative, batch, birdErrors, batchErrors;

    private readonly double factor = 1;

    public FeedSums(FeedPath path, WeightPath weights, CurveError error, HeadCountPath heads, FeedingConditions conditions, FeedForecastOptions options)
    {
        (this.path, this.weights, this.error, this.heads, this.conditions) = (path, weights, error, heads, conditions);
        (level, normal) = (options.Level, Distributions.NormalQuantile((1 + options.Level) / 2));
        parts = new FeedParts[Count];
        birds = new double[Count];
        (cumulative, batch) = (new double[Count + 1], new double[Count + 1]);
        for (int day = 0; day < Count; day++)
        {
            parts[day] = path.On(day, weights.Kilograms[day], weights.Middles[day], weights.Kilograms[day + 1]);
            RequireFeed(day);
            birds[day] = heads.BirdsAt(Age.FromDays(Start + day + 0.5));
            cumulative[day + 1] = cumulative[day] + parts[day].FeedKilograms;
            batch[day + 1] = batch[day] + (birds[day] * parts[day].FeedKilograms);
        }

        if (options.Record is { } record)
        {
            double days = Require.Between(record.Age.Days - Start, 1, Count, "d after placement", nameof(options));
            Factor = FarmFactor.Of(record, Along(batch, days), conditions, normal, level);
            if (Factor.IsApplied)
            {
                (factor, RecordedDays) = (Factor.Ratio, Math.Min(Count, (int)Math.Round(days)));
            }
        }

        double[] one = [.. birds.Select(_ => 1.0)];
        birdErrors = error.Cumulative(RecordedDays, one);
        batchErrors = error.Cumulative(RecordedDays, birds);
    }

    public int Count => path.Count;

    public FarmFactor? Factor { get; }

    /// <summary>The days whose feed together an applied record tells; 0 without one.</summary>
    public int RecordedDays { get; }

    private double Start => heads.AgeAtPlacement.Days;

    /// <summary>Error of the model in whatever lies after a record, or in all feed to an age without one.</summary>
    public double LongError => RecordedDays > 0 ? FarmFactor.RestError(Factor!.Record.Age.Days) : conditions.Model.CumulativeError;

    /// <summary>A record tells the level, not the shape within a week.</summary>
    private double ShortError => conditions.Model.DailyError;

    private ModelInfo Model => conditions.Model.Model;

    public FeedDay Day(int day)
    {
        double end = Start + day + 1;
        double daily = factor * parts[day].FeedKilograms;
        double eaten = 1000 * parts[day].FeedKilograms * factor * (1 - conditions.Waste.Fraction);
        return new(
            Age.FromDays(end),
            heads.BirdsAt(Age.FromDays(end)),
            Mass.FromKilograms(weights.Kilograms[day + 1]),
            parts[day],
            MassFlow.FromGramsPerDay(DrinkingWater.GramsPerDay(eaten, path.Celsius(day), conditions.WaterInHeat)),
            Of(daily, Both(ShortError, error.Of(day, day + 1, birds))),
            Of(factor * cumulative[day + 1], ErrorTo(cumulative, birdErrors, day + 1)),
            Of(factor * batch[day + 1], ErrorTo(batch, batchErrors, day + 1)));
    }

    /// <summary>Feed of a bird each day on another curve, kg; false where no bird could follow it.</summary>
    public bool OfCurve(Span<double> kilograms, Span<double> feedKilograms)
    {
        weights.Anchor(kilograms);
        bool known = path.Feed(kilograms, feedKilograms);
        for (int day = 0; known && day < Count; day++)
        {
            feedKilograms[day] *= factor;
        }

        return known;
    }

    public bool HasPhase(int phase) => Enumerable.Range(0, Count).Any(day => path.Phase(day) == phase);

    public Estimate<Mass> PhaseFeed(int phase)
    {
        int from = Enumerable.Range(0, Count).First(day => path.Phase(day) == phase);
        int to = Enumerable.Range(from, Count - from).Last(day => path.Phase(day) == phase) + 1;
        return Of(factor * (batch[to] - batch[from]), Both(ShortError, error.Of(from, to, birds)));
    }

    public Estimate<Mass> BatchTo(double days) => Of(factor * Along(batch, days), ErrorTo(batch, batchErrors, (int)Math.Ceiling(days)));

    private void RequireFeed(int day)
    {
        if (!(parts[day].FeedKilograms > 0))
        {
            throw Require.Refusal("curve", string.Create(
                CultureInfo.InvariantCulture,
                $"A fall from {WeightText.Of(weights.Kilograms[day])} at {Start + day:0.##} d to {WeightText.Of(weights.Kilograms[day + 1])} a day later is not allowed; expected weights that a bird which eats can follow."));
        }
    }

    private static double Both(double model, double curve) => Math.Sqrt((model * model) + (curve * curve));

    private static double Along(double[] sums, double days)
    {
        int day = Math.Min((int)days, sums.Length - 2);
        return sums[day] + ((days - day) * (sums[day + 1] - sums[day]));
    }

    /// <summary>
    /// Standard error of the logarithm of feed from placement to the end of a day. Feed of an applied record is known: only what follows it is in doubt. Before the
    /// record its total is known and how it was spread over the days is the model's.
    /// </summary>
    private double ErrorTo(double[] sums, double[] curve, int day) => RecordedDays == 0
        ? Both(LongError, day == 0 ? 0 : curve[day - 1])
        : day <= RecordedDays
            ? day == RecordedDays ? 0 : ShortError
            : Both(LongError, curve[day - 1]) * (sums[day] - sums[RecordedDays]) / sums[day];

    private Estimate<Mass> Of(double kilograms, double logError)
    {
        double spread = Math.Exp(normal * logError);
        return new(Mass.FromKilograms(kilograms), Interval<Mass>.Of(Mass.FromKilograms(kilograms / spread), Mass.FromKilograms(kilograms * spread), level), Model, []);
    }
}
