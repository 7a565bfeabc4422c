using System.Globalization;

namespace Poultry.Growth.Tests.Properties.Sweep;

/// <summary>How much is tried at random: little in every run of the suite, more where <c>POULTRY_GROWTH_CALLS</c> says so.</summary>
internal static class SweepSettings
{
    public static int Calls { get; } = int.Parse(Environment.GetEnvironmentVariable("POULTRY_GROWTH_CALLS") ?? "8000", CultureInfo.InvariantCulture);
}
