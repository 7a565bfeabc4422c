namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Commands whose answer is no curve.</summary>
internal static class NoChart
{
    public static void Refuse(CommonOptions common, OptionWords words)
    {
        if (common.Chart is not null)
        {
            words.Refuse("--chart: this command has nothing to draw; expected another command");
        }
    }
}
