using System.Globalization;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>An earlier batch of the farm: what was weighed, and what kind of batch it was.</summary>
public sealed class PastBatch
{
    private PastBatch(string name, WeighInSeries weighIns, BatchKind kind) => (Name, WeighIns, Kind) = (name, weighIns, kind);

    /// <summary>The farm's own name for it.</summary>
    public string Name { get; }

    /// <summary>What was weighed. One weigh-in is enough to count.</summary>
    public WeighInSeries WeighIns { get; }

    /// <summary>Strain, system and sex.</summary>
    public BatchKind Kind { get; }

    /// <summary>An earlier batch.</summary>
    /// <param name="name">The farm's own name for it, as in <c>2027 spring</c>.</param>
    /// <param name="weighIns">What was weighed.</param>
    /// <param name="kind">Strain, system and sex.</param>
    /// <exception cref="ArgumentException">The name is empty, or a weigh-in is of the other sex.</exception>
    public static PastBatch Of(string name, WeighInSeries weighIns, BatchKind kind)
    {
        Require.Text(name);
        ArgumentNullException.ThrowIfNull(weighIns);
        ArgumentNullException.ThrowIfNull(kind);
        WeighIn? stranger = kind.Sex == Sex.Mixed ? null : weighIns.FirstOrDefault(weighIn => weighIn.Sex != kind.Sex && weighIn.Sex != Sex.Mixed);
        return stranger is null
            ? new PastBatch(name.Trim(), weighIns, kind)
            : throw new ArgumentException(
                $"The weigh-in at {stranger.Age} is of {stranger.Sex} birds, the batch of {kind.Sex} birds; expected weigh-ins of the batch's sex.", nameof(weighIns));
    }

    /// <summary>Name, kind and weigh-ins in one line and in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name} ({Kind}): {WeighIns}");

    /// <summary>
    /// What was measured on the logarithmic scale: means, and the variance that sampling n birds gives them, CV²/n, with the CV of the birds of this
    /// batch where some were weighed singly or with SD, else <see cref="ErrorModel.AssumedCoefficientOfVariation"/>.
    /// </summary>
    internal static MixedGroup GroupOf(WeighInSeries weighIns)
    {
        int n = weighIns.Count;
        double birdSpread = weighIns.PooledCoefficientOfVariation ?? ErrorModel.AssumedCoefficientOfVariation;
        (double[] days, double[] logs, double[] variances) = (new double[n], new double[n], new double[n]);
        for (int i = 0; i < n; i++)
        {
            days[i] = weighIns[i].AgeDays;
            logs[i] = Math.Log(weighIns[i].MeanKilograms);
            variances[i] = birdSpread * birdSpread / weighIns[i].BirdsWeighed;
        }

        return new(days, logs, variances);
    }
}
