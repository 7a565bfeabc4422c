using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Poultry.Growth.Calculators.Printing;

/// <summary>Lines and tables on a writer, the same on a screen and in a pipe: plain signs, no colour, no number broken over two lines.</summary>
internal sealed class Page(TextWriter output, Units units)
{
    /// <summary>Wider than any table of ours.</summary>
    private const int Width = 1000;

    public Units Units => units;

    public void Line(string text) => output.WriteLine(text);

    public void Title(string text)
    {
        output.WriteLine();
        output.WriteLine(text);
    }

    /// <summary>A table; numbers stand on the right, columns whose header starts with &lt; on the left.</summary>
    public void Table(IReadOnlyList<string> headers, IEnumerable<IReadOnlyList<string>> rows)
    {
        Table table = new() { Border = TableBorder.Ascii, UseSafeBorder = false };
        foreach (string header in headers)
        {
            bool left = header.StartsWith('<');
            table.AddColumn(new TableColumn(Cell(header.TrimStart('<'))) { Alignment = left ? Justify.Left : Justify.Right, NoWrap = true });
        }

        foreach (IReadOnlyList<string> row in rows)
        {
            table.AddRow(row.Select(Cell));
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new AnsiConsoleOutput(output),
        });
        console.Profile.Width = Width;
        console.Write(table);
    }

    /// <summary>What of a file was not read.</summary>
    public void PassedOver(WeighInReading reading)
    {
        if (reading.RowsPassedOver > 0)
        {
            Line("Passed over: rows that do not fit --where: " + Numbers.Whole(reading.RowsPassedOver));
        }

        if (reading.IgnoredColumns.Count > 0)
        {
            Line("Passed over: columns " + string.Join(", ", reading.IgnoredColumns));
        }
    }

    public void Flagged(IReadOnlyList<FileSuspicion> suspicions)
    {
        if (suspicions.Count > 0)
        {
            Title("Looks wrong");
            foreach (FileSuspicion suspicion in suspicions)
            {
                Line("? " + suspicion.ToString());
            }
        }
    }

    /// <summary>Cautions, and last those that go with rows marked by a star.</summary>
    public void Cautions(IReadOnlyList<Caution> cautions, params IReadOnlyList<Caution> starred)
    {
        if (cautions.Count + starred.Count > 0)
        {
            Title("Cautions");
            foreach (Caution caution in cautions)
            {
                Line("! " + caution.Text);
            }

            foreach (Caution caution in starred)
            {
                Line("* " + caution.Text);
            }
        }
    }

    public void Sources(IReadOnlyList<Citation> sources)
    {
        Title("Sources");
        foreach (Citation source in sources)
        {
            Line("- " + source + " (" + Numbers.Words(source.HowKnown) + ")");
        }
    }

    /// <summary>Text is no markup: a bracket in a name of a file stays a bracket.</summary>
    private static IRenderable Cell(string text) => new Text(text);
}
