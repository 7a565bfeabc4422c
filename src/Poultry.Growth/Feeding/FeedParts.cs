namespace Poultry.Growth.Feeding;

/// <summary>Energy of one bird and day, kcal, by the model's parts and the stated ranging, and the feed for it, kg.</summary>
internal readonly record struct FeedParts(EnergyParts Energy, double Ranging, double FeedKilograms)
{
    public double Kilocalories => Energy.Total + Ranging;
}
