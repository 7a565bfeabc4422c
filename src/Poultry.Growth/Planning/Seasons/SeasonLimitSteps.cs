namespace Poultry.Growth.Planning;

/// <summary>By how much a limit is raised to see what it is worth: a step a farm can take.</summary>
internal static class SeasonLimitSteps
{
    public const int Birds = 25;

    public const double SquareMeters = 1000;

    public static string Words(SeasonLimitKind kind) => kind switch
    {
        SeasonLimitKind.BrooderPlaces => "25 brooder places more",
        SeasonLimitKind.Shelters => "one shelter more",
        SeasonLimitKind.Ground => "1000 m2 (a quarter acre) of fresh ground more",
        SeasonLimitKind.Labour => "one hour of work a day more",
        _ => "25 birds more at the plant that day",
    };
}
