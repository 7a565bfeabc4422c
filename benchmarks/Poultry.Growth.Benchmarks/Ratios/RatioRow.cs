using System.Globalization;

namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>A line of benchmarks/baseline.csv.</summary>
internal sealed record RatioRow(string Name, string Alternative, double TimesAsFast, long AllocatedBytes)
{
    public const string Header = "name;alternative;times_as_fast;allocated_bytes";

    public string Times => Text(TimesAsFast);

    public static RatioRow Parse(string line)
    {
        string[] cells = line.Split(';');
        return new(cells[0], cells[1], double.Parse(cells[2], CultureInfo.InvariantCulture), long.Parse(cells[3], CultureInfo.InvariantCulture));
    }

    public string Separated(string separator) => string.Join(separator, Name, Alternative, Times, AllocatedBytes.ToString(CultureInfo.InvariantCulture));

    private static string Text(double ratio) => Math.Round(ratio, ratio < 1 ? 3 : ratio < 10 ? 2 : 0).ToString(CultureInfo.InvariantCulture);
}
