namespace Poultry.Growth.Carcass;

/// <summary>The flows of mass between farm and pack, in kg of one flock.</summary>
internal readonly record struct BalanceFlows(
    double FullFed, double LostOffFeed, double CondemnedLive, double Dressed, double CondemnedCarcass, double Trim, double Water, double OtherParts)
{
    /// <summary>What comes back, water included.</summary>
    public double Carcass => Dressed - CondemnedCarcass - Trim + Water;

    /// <summary>What the killed birds weighed beside carcass and named parts.</summary>
    public double ByDifference => FullFed - LostOffFeed - CondemnedLive - Dressed - OtherParts;

    /// <summary>Beside the carcass, as a share of the birds killed.</summary>
    public double OffalShare => (ByDifference + OtherParts) / (FullFed - LostOffFeed - CondemnedLive);

    /// <param name="fullFed">Live weight full-fed.</param>
    /// <param name="kept">Live weight at killing over full-fed.</param>
    /// <param name="ratio">Carcass over live weight in the ratio's own state.</param>
    /// <param name="ratioKept">Live weight in that state over full-fed.</param>
    /// <param name="condemnedLive">Share of the live weight.</param>
    /// <param name="condemnedCarcass">Share of the carcass weight, passed and condemned.</param>
    /// <param name="trim">Share of the carcass weight passed.</param>
    /// <param name="uptake">Water as a part of the hot carcass.</param>
    /// <param name="otherParts">Share of the live weight at killing.</param>
    public static BalanceFlows Of(
        double fullFed, double kept, double ratio, double ratioKept, double condemnedLive, double condemnedCarcass, double trim, double uptake, double otherParts)
    {
        double dressed = ratio * fullFed * ratioKept * (1 - condemnedLive);
        double passed = dressed * (1 - condemnedCarcass);
        return new(
            fullFed,
            fullFed * (1 - kept),
            fullFed * kept * condemnedLive,
            dressed,
            dressed * condemnedCarcass,
            passed * trim,
            passed * (1 - trim) * uptake,
            fullFed * kept * (1 - condemnedLive) * otherParts);
    }
}
