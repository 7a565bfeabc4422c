
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The share of the birds in a weight band at one age; null for no limit.</summary>
internal sealed record BandNode(double AgeDays, double? FromKg, double? ToKg, double SharePercent)
{
    public static IReadOnlyList<BandNode> Of(FlockAtAge flock) =>
        [.. flock.Bands.Select(band => new BandNode(flock.Age.Days, band.From?.Kilograms, band.To?.Kilograms, band.Share.Percent))];
}
