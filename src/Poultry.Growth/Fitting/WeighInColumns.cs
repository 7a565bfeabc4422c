using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>The weigh-ins of a series as columns of numbers, weighted as an error model asks.</summary>
internal sealed class WeighInColumns
{
    private readonly double[] columns;
    private readonly int count;

    public WeighInColumns(WeighInSeries weighIns, ErrorModel errors)
    {
        (count, Scale) = (weighIns.Count, errors.Scale);
        columns = new double[6 * count];
        double birdSpread = errors.CoefficientOfVariation ?? weighIns.PooledCoefficientOfVariation ?? ErrorModel.AssumedCoefficientOfVariation;
        for (int i = 0; i < count; i++)
        {
            WeighIn weighIn = weighIns[i];
            (double weight, double within, double observations) = errors.Weigh(weighIn, birdSpread);
            columns[i] = weighIn.AgeDays;
            columns[count + i] = weighIn.MeanKilograms;
            columns[(2 * count) + i] = Math.Log(weighIn.MeanKilograms);
            columns[(3 * count) + i] = weight;
            columns[(4 * count) + i] = within;
            columns[(5 * count) + i] = observations;
            Observations += observations;
            if (i == 0 || weighIn.AgeDays > weighIns[i - 1].AgeDays)
            {
                DifferentAges++;
            }
        }
    }

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

    private ReadOnlySpan<double> Column(int column) => columns.AsSpan(column * count, count);
}
