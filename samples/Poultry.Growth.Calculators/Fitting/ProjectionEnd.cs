using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Where the one curve of a projection ends: it is a table by day. Weights by age have no such end.</summary>
internal static class ProjectionEnd
{
    public static Age Of(Projection projection) => ((TabulatedCurve)projection.Curve).Rows[^1].Age;
}
