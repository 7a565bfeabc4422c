namespace Poultry.Growth.Files;

/// <summary>A column of numbers beside ages: its names by unit, and whether its cells may be empty.</summary>
/// <param name="Stem">As in <c>delivered</c>.</param>
/// <param name="Units">Ending of the name, and from a number in it to the unit of the reader; to no number where there can't be one like it.</param>
/// <param name="IsOptional">Whether cells, and the column, may be left out.</param>
/// <param name="Least">Numbers below are refused, in the unit of the reader.</param>
/// <param name="Most">Numbers above likewise.</param>
/// <param name="Expected">What the cells hold, as the end of a message.</param>
internal sealed record AgedColumn(
    string Stem, IReadOnlyList<(string Unit, Func<double, double> Convert)> Units, bool IsOptional, double Least, double Most, string Expected)
{
    public string Names => string.Join(" or ", Units.Select(unit => Stem + "_" + unit.Unit));
}
