using Poultry.Growth.Numerics;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>
/// The weigh-ins of a series as columns of numbers, weighted as an error model asks. The columns end in whole fours (<see cref="Lanes"/>): the last weigh-in again, without weight.
/// </summary>
internal sealed class WeighInColumns
{
    private readonly double[] columns;
    private readonly int length;

    public WeighInColumns(WeighInSeries weighIns, ErrorModel errors)
    {
        (Count, Scale) = (weighIns.Count, errors.Scale);
        length = Lanes.Padded(Count);
        columns = new double[6 * length];
        double birdSpread = errors.BirdSpread(weighIns);
        for (int i = 0; i < Count; i++)
        {
            WeighIn weighIn = weighIns[i];
            (double weight, double within, double observations) = errors.Weigh(weighIn, birdSpread);
            columns[i] = weighIn.AgeDays;
            columns[length + i] = weighIn.MeanKilograms;
            columns[(2 * length) + i] = Math.Log(weighIn.MeanKilograms);
            columns[(3 * length) + i] = weight;
            columns[(4 * length) + i] = within;
            columns[(5 * length) + i] = observations;
            Observations += observations;
            if (i == 0 || weighIn.AgeDays > weighIns[i - 1].AgeDays)
            {
                DifferentAges++;
            }
        }

        for (int i = Count; i < length; i++)
        {
            columns[i] = columns[Count - 1];
            columns[length + i] = columns[length + Count - 1];
            columns[(2 * length) + i] = columns[(2 * length) + Count - 1];
        }
    }

    /// <summary>How many weigh-ins; the columns may be longer.</summary>
    public int Count { get; }

    public int DifferentAges { get; }

    public double Observations { get; }

    public double Origin => AgeDays[^1];

    public ResidualScale Scale { get; }

    public ReadOnlySpan<double> AgeDays => Column(0);

    public ReadOnlySpan<double> Kilograms => Column(1);

    public ReadOnlySpan<double> LogKilograms => Column(2);

    public ReadOnlySpan<double> Weights => Column(3);

    public ReadOnlySpan<double> Within => Column(4);

    public ReadOnlySpan<double> ObservationCounts => Column(5);

    public FitData Data => new()
    {
        AgeDays = AgeDays,
        Kilograms = Kilograms,
        LogKilograms = LogKilograms,
        Weights = Weights,
        Within = Within,
        Observations = ObservationCounts,
        Origin = Origin,
        Scale = Scale,
    };

    private ReadOnlySpan<double> Column(int column) => columns.AsSpan(column * length, length);
}
