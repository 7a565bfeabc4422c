using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>How far a weigh-in lies from the curve.</summary>
internal sealed record ResidualNode(double AgeDays, int Birds, double WeighedKg, double FittedKg, double Standardised)
{
    public static IReadOnlyList<ResidualNode> Of(GrowthFit fit) =>
    [
        .. fit.Residuals().Select(residual => new ResidualNode(
            residual.WeighIn.Age.Days,
            residual.WeighIn.BirdsWeighed,
            residual.WeighIn.MeanWeight.Kilograms,
            residual.Fitted.Kilograms,
            residual.Standardised)),
    ];
}
