using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>A family fitted to a printed table: the default error model (SD in proportion to the mean), every row as 20 birds.</summary>
internal sealed record HandbookFit(string Table, CurveFamily Family, GrowthFit Fit)
{
    /// <summary>Every family on every table.</summary>
    public static IReadOnlyList<HandbookFit> All { get; } =
        [.. Handbook.Tables.Keys.SelectMany(table => CurveFamilies.All.Select(family => new HandbookFit(table, family, GrowthFit.Of(Handbook.Series(table, birds: 20), family))))];

    /// <summary>(table - curve)/curve in percent with the age of the row; none where there is no curve.</summary>
    public IReadOnlyList<(double Days, double Percent)> Deviations { get; } = Fit.Curve is null
        ? []
        : [.. Fit.Residuals().Select(residual => (residual.WeighIn.Age.Days, 100 * (residual.Difference / residual.Fitted)))];

    /// <summary>Endless where there is no curve.</summary>
    public double RmsPercent => Deviations.Count == 0 ? double.PositiveInfinity : Math.Sqrt(Deviations.Average(row => row.Percent * row.Percent));

    public static IEnumerable<HandbookFit> Of(string table) => All.Where(fit => fit.Table == table);
}
