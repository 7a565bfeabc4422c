using System.CommandLine;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The standard that a batch is held against: one that comes with the library, or a file.</summary>
internal sealed class ComparedStandard
{
    private ComparedStandard(StandardReading reading) => (File, Name, Year, Table) = (reading.File, reading.Name!, reading.Year, reading.Standard!);

    private ComparedStandard(GrowthStandard shipped) => (Shipped, Name, Year, Table) = (shipped, shipped.Name, shipped.Year, shipped.Table);

    /// <summary>Null for one that comes with the library.</summary>
    public string? File { get; }

    /// <summary>Null for a file.</summary>
    public GrowthStandard? Shipped { get; }

    public string Name { get; }

    public int? Year { get; }

    public TabulatedCurve Table { get; }

    /// <summary>The standard of a name or a file; null, and problems, where there is none.</summary>
    public static ComparedStandard? Read(OptionWords words, Option<string?> option)
    {
        string? name = words.Text(option);
        if (name is not null && GrowthStandard.Find(name) is { } shipped)
        {
            return new(shipped);
        }

        if (name is null || !System.IO.File.Exists(name))
        {
            words.Refuse(option.Name + (name is null ? ": is missing" : ": \"" + name + "\" is no standard and there is no such file") + "; expected a file (CSV), or one of");
            foreach (GrowthStandard known in GrowthStandard.All)
            {
                words.Refuse("  " + known.Id.PadRight(24) + known.Name);
            }

            return null;
        }

        StandardReading reading = StandardFile.Read(name);
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Standard is null ? null : new(reading);
    }
}
