using System.Globalization;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Puts rows together into weigh-ins, and remembers the line of every bird.</summary>
internal sealed class WeighInAssembly
{
    private readonly string file;
    private readonly Dictionary<WeighIn, int[]> lines = [];
    private readonly List<WeighIn> weighIns = [];
    private readonly List<(WeighIn WeighIn, string Text)> repeated = [];

    private WeighInAssembly(string file) => this.file = file;

    /// <summary>Single birds of one age and sex in consecutive rows are one weigh-in; a mean or a group is one by itself.</summary>
    public static WeighInAssembly Of(IReadOnlyList<WeighInRow> rows, ProblemList problems)
    {
        WeighInAssembly assembly = new(problems.File);
        Dictionary<(WeighInKind, Age, Sex, double, int, double?), int> seen = [];
        for (int at = 0; at < rows.Count;)
        {
            WeighInRow first = rows[at];
            int end = at + 1;
            while (first.Kind == WeighInKind.Birds && end < rows.Count && IsOneWeighIn(first, rows[end]))
            {
                end++;
            }

            WeighInRow[] together = [.. rows.Skip(at).Take(end - at)];
            WeighIn weighIn = assembly.Add(together);
            var content = (first.Kind, first.Age, first.Sex, first.Kilograms, first.Birds, first.StandardDeviationKilograms);
            if (first.Kind != WeighInKind.Birds && !seen.TryAdd(content, first.Cell.Line))
            {
                assembly.Repeat(weighIn, first, seen[content], problems);
            }

            at = end;
        }

        return assembly;
    }

    /// <summary>The series with or without what is flagged; null, and a problem, where nothing would be left.</summary>
    public WeighInSeries? Series(bool excludeFlagged, List<FileSuspicion> suspicions, ProblemList problems)
    {
        suspicions.AddRange(repeated.Select(repeat =>
            new FileSuspicion(file, lines[repeat.WeighIn], FileSuspicion.RepeatedGroup, repeat.Text, origin: null, excludeFlagged)));
        WeighInSeries series = WeighInSeries.Of(excludeFlagged ? weighIns.Except(repeated.Select(repeat => repeat.WeighIn)) : weighIns);
        suspicions.AddRange(series.Suspicions.Select(suspicion =>
            new FileSuspicion(file, Lines(suspicion), suspicion.Code, suspicion.Text, suspicion, excludeFlagged)));
        if (!excludeFlagged)
        {
            return series;
        }

        ILookup<WeighIn, Suspicion> flagged = series.Suspicions.ToLookup(suspicion => suspicion.WeighIn);
        if (series.Any(weighIn => IsLeft(weighIn, [.. flagged[weighIn]])))
        {
            return series.Without(series.Suspicions);
        }

        problems.Add("file", null, "has no weigh-in left without the flagged ones", "at least one weigh-in that looks right");
        return null;
    }

    private static bool IsLeft(WeighIn weighIn, Suspicion[] flagged) =>
        !Array.Exists(flagged, suspicion => suspicion.BirdIndex is null)
        && flagged.DistinctBy(suspicion => suspicion.BirdIndex).Count() < weighIn.BirdsWeighed;

    private static bool IsOneWeighIn(WeighInRow first, WeighInRow next) =>
        next.Kind == WeighInKind.Birds && next.Age == first.Age && next.Sex == first.Sex;

    private WeighIn Add(WeighInRow[] rows)
    {
        WeighInRow first = rows[0];
        WeighIn weighIn = (first.Kind switch
        {
            WeighInKind.Birds => WeighIn.Birds(first.Age, rows.Select(row => Mass.FromKilograms(row.Kilograms))),
            WeighInKind.Mean => WeighIn.Mean(first.Age, Mass.FromKilograms(first.Kilograms), first.Birds, Spread(first)),
            _ => WeighIn.Group(first.Age, Mass.FromKilograms(first.Kilograms), first.Birds),
        }).Of(first.Sex);
        string note = string.Join("; ", rows.Select(row => row.Note).Where(text => !string.IsNullOrWhiteSpace(text)).Distinct());
        weighIn = note.Length == 0 ? weighIn : weighIn.Noted(note);
        weighIns.Add(weighIn);
        lines.Add(weighIn, [.. rows.Select(row => row.Cell.Line)]);
        return weighIn;
    }

    private static Mass? Spread(WeighInRow row) => row.StandardDeviationKilograms is { } kilograms ? Mass.FromKilograms(kilograms) : null;

    /// <summary>The same mean twice is one weigh-in typed twice; the same group twice may be two crates alike.</summary>
    private void Repeat(WeighIn weighIn, WeighInRow row, int earlier, ProblemList problems)
    {
        string line = string.Create(CultureInfo.InvariantCulture, $"line {earlier}");
        if (row.Kind == WeighInKind.Mean)
        {
            problems.Add(row.Cell, "mean weight", "repeats " + line + " exactly", "every weigh-in once");
            return;
        }

        string text = "A group of " + string.Create(CultureInfo.InvariantCulture, $"{row.Birds}") + " at " + row.Age + " repeats " + line
            + " exactly; expected every group once, unless two were alike.";
        repeated.Add((weighIn, text));
    }

    private int[] Lines(Suspicion suspicion) => suspicion.BirdIndex is { } bird ? [lines[suspicion.WeighIn][bird]] : lines[suspicion.WeighIn];
}
