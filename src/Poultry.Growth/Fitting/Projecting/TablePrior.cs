using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>What a printed table says about the three parameters of a Gompertz curve.</summary>
internal static class TablePrior
{
    /// <summary>Every row counts the same, in percent.</summary>
    private static readonly ErrorModel EveryRow = ErrorModel.Sampling(ErrorModel.AssumedCoefficientOfVariation);

    /// <summary>ln A, ln k and t* of the Gompertz curve that follows the rows from 7 d on.</summary>
    public static double[] Means(TabulatedCurve table)
    {
        WeighIn[] rows = [.. table.Rows.Where(row => row.Age.Days >= ProjectionData.YoungestDays).Select(row => WeighIn.Mean(row.Age, row.Weight, birds: 1))];
        if (rows.Length < 4)
        {
            throw new ArgumentException("Fewer than four rows from 7 d on; expected four or more, for a curve has three parameters.", nameof(table));
        }

        GrowthFit fit = GrowthFit.Of(WeighInSeries.Of(rows), CurveFamilies.Gompertz, EveryRow);
        return fit is { Curve: not null, Parameters: [{ Value: var mature }, { Value: var rate }, { Value: >= 0 and var inflection }] }
            ? [Math.Log(mature), Math.Log(rate), inflection]
            : throw new ArgumentException("No Gompertz curve follows the rows of " + table.Model.Name + (fit.Reason is { } why ? ". " + why.TrimEnd('.') : "") + "; expected weights that rise faster at first and slower later.", nameof(table));
    }

    /// <summary>The table's own evidence under the equation of a prior.</summary>
    public static ModelInfo Model(TabulatedCurve table) => ShippedPriors.Info(
        "prior-table",
        table.Model.Name,
        "The centre follows the rows as closely as a Gompertz curve can; how far flocks lie from them is taken from another prior.",
        table.Model.HowKnown,
        [.. table.Model.Citations]);
}
