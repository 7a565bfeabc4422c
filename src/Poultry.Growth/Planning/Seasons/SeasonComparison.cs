using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>
/// A season of batches, each drawn on every day considered as a plan is, and the choice among them that brings most within what they share: which batches, when their
/// chicks come, when they are killed.
/// </summary>
public sealed class SeasonComparison
{
    private SeasonComparison(SeasonPlan plan, IReadOnlyList<SeasonOutcome> batches, Season season, HarvestOptions options)
    {
        (Plan, Batches) = (plan, batches);
        double[][] raised = [.. batches.Where(batch => batch.Chosen is not null).Select(batch => batch.Chosen!.Margins)];
        double[] alike = Sums(raised, options.Draws, stride: 0), apart = Sums(raised, options.Draws, stride: options.Draws / Math.Max(1, raised.Length));
        Sample sample = new(options.Draws, options.Level);
        Margin = sample.Estimate(alike, Money.Of);
        MarginApart = sample.Estimate(apart, Money.Of).Interval;
        BindingLimits = [.. season.BindingLimits.Select(limit => limit.With(sample.Estimate(More(batches, limit, alike), Money.Of).Interval))];
        BadCase = Money.Of(sample.MeanOfWorst(alike, HarvestResult.WorstPart));
        Cautions = [.. SeasonCautions.Of(this)];
    }

    /// <summary>What the comparison is made of.</summary>
    public static ModelInfo Model { get; } = new(
        "season-comparison",
        "The season that brings most within what its batches share",
        "max sum over batches of M(b, d) so that on every day sum of needs <= limits",
        [new("M", "mean margin of batch b raised on days d, as a plan draws it", "money"), new("b", "batch", "-"), new("d", "day its chicks come and day of killing", "-")],
        [new Citation("SeasonSearch", "Every choice of days for every batch that could still be better is tried; own arithmetic", HowKnown.Derived)],
        "The choice is exact for the means of the draws. The margin's range is wide where every batch meets the same fates (as if the farm, the year and the prices decided), narrower where each meets its own; the truth lies between.",
        HowKnown.Assumption);

    /// <summary>What was compared.</summary>
    public SeasonPlan Plan { get; }

    /// <summary>What becomes of each batch, in the order given.</summary>
    public IReadOnlyList<SeasonOutcome> Batches { get; }

    /// <summary>What keeps the season from bringing more, the dearest first, each with the range of what it is worth.</summary>
    public IReadOnlyList<SeasonLimit> BindingLimits { get; }

    /// <summary>What the batches raised bring together, where all meet the same fates: the wide range.</summary>
    public Estimate<Money> Margin { get; }

    /// <summary>The range where each batch meets fates of its own: too narrow, as growth, prices and customers are the farm's.</summary>
    public Interval<Money> MarginApart { get; }

    /// <summary>The mean of the worst tenth, where all meet the same fates.</summary>
    public Money BadCase { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The best season.</summary>
    /// <param name="plan">Batches and what they share.</param>
    /// <param name="options">Draws, seed, level; the usual where null. All batches meet the same fates, so that days and batches are compared on equal terms.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <returns>Null where the promised batches do not fit together within the limits.</returns>
    /// <exception cref="ArgumentException">A batch has no day of killing, or one before its birds move out.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are more than 16 batches.</exception>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public static SeasonComparison? Of(SeasonPlan plan, HarvestOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        HarvestOptions asked = options ?? new();
        SeasonDay[][] days =
        [
            .. plan.Candidates.Select(candidate => candidate.Starts.SelectMany(start => SeasonDay.Of(candidate, start, HarvestComparison.Of(start, asked, stop))).ToArray()),
        ];
        SeasonBatch[] batches =
        [
            .. plan.Candidates.Zip(days, (candidate, ways) => (candidate.IsPromised ? (Func<string, IReadOnlyList<SeasonOption>, SeasonBatch>)SeasonBatch.Promised : SeasonBatch.Possible)(
                candidate.Name, [.. ways.Select(way => way.Option)])),
        ];
        return Season.Best(batches, plan.Limits) is not { } season ? null : new(plan, [.. Outcomes(plan, days, batches, season, new(asked.Draws, asked.Level))], season, asked);
    }

    /// <summary>As in <c>Farm 2027: 2 of 3 batches, 1234.00 (90 %: ...)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Plan.Name}: {Batches.Count(batch => batch.Chosen is not null)} of {Batches.Count} batches, {Margin}");

    private static IEnumerable<SeasonOutcome> Outcomes(SeasonPlan plan, SeasonDay[][] days, SeasonBatch[] batches, Season season, Sample sample)
    {
        SeasonDay?[] chosen = [.. season.Choices.Select((choice, at) => days[at].FirstOrDefault(day => day.Option == choice.Option))];
        for (int at = 0; at < days.Length; at++)
        {
            SeasonDay alone = days[at].MaxBy(day => day.Option.Margin.Amount)!;
            (string Name, SeasonOption Option)[] others =
            [
                .. chosen.Select((day, other) => (batches[other].Name, Option: other == at ? null : day?.Option)).Where(other => other.Option is not null).Select(other => (other.Name, other.Option!)),
            ];
            bool givesWay = alone != chosen[at] && alone.Option.Margin.Amount > (chosen[at]?.Option.Margin.Amount ?? 0);
            yield return new(
                plan.Candidates[at],
                days[at],
                chosen[at],
                alone,
                givesWay ? [.. SeasonUse.InTheWay(plan.Limits, batches, alone.Option, others)] : [],
                givesWay && chosen[at] is { } taken && taken.Option.Killed < alone.Option.Killed ? [.. FreedFor(plan.Limits, batches, taken.Option, alone.Option, others)] : [],
                sample);
        }
    }

    /// <summary>Who moves into the shelters after it is killed, and could not if it were killed as late as alone: only shelters count here.</summary>
    private static IEnumerable<string> FreedFor(
        SeasonLimits limits, SeasonBatch[] batches, SeasonOption taken, SeasonOption alone, (string Name, SeasonOption Option)[] others) => SeasonUse
        .InTheWay(new() { Shelters = limits.Shelters, ShelterRest = limits.ShelterRest }, batches, alone, others)
        .Where(name => others.Any(other => other.Name == name && other.Option.MovedOut >= taken.Killed));

    /// <summary>What the season with a step more of a limit brings more, fate by fate.</summary>
    private static double[] More(IReadOnlyList<SeasonOutcome> batches, SeasonLimit limit, double[] margins)
    {
        double[][] raised = [.. batches.Zip(limit.Raised, (batch, option) => batch.Days.FirstOrDefault(day => day.Option == option)?.Margins).OfType<double[]>()];
        return [.. Sums(raised, margins.Length, stride: 0).Zip(margins, (with, without) => with - without)];
    }

    /// <summary>Margins added fate by fate; with a stride each batch begins at another fate, so that no two meet the same.</summary>
    private static double[] Sums(double[][] margins, int draws, int stride)
    {
        double[] sums = new double[draws];
        for (int batch = 0; batch < margins.Length; batch++)
        {
            for (int draw = 0; draw < draws; draw++)
            {
                sums[draw] += margins[batch][(draw + (batch * stride)) % draws];
            }
        }

        return sums;
    }
}
