using System.CommandLine;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>How every command answers.</summary>
internal sealed class CommonOptions
{
    private readonly Option<bool> json = new("--json") { Description = "One JSON document instead of tables; always metric, the unit stands in the key." };

    private readonly Option<string?> units = new("--units") { HelpName = "metric|us", Description = "Units of tables and charts. [default: metric]" };

    private readonly Option<string?> level = new("--level") { HelpName = "0.90", Description = "The chance that intervals claim. [default: 0.90]" };

    private readonly Option<string?> chart = new("--chart") { HelpName = "FILE.svg", Description = "Draw a chart; an earlier chart is replaced, no other file." };

    public bool Json { get; private set; }

    public Units Units { get; private set; } = Units.Metric;

    public double Level { get; private set; } = GrowthFit.DefaultLevel;

    /// <summary>Where the chart goes; null where none is wanted.</summary>
    public OutputFile? Chart { get; private set; }

    /// <summary>For an answer with intervals or without, that can be drawn or not.</summary>
    public static CommonOptions AddTo(Command command, bool intervals, bool chart)
    {
        CommonOptions options = new();
        command.Add(options.json);
        command.Add(options.units);
        if (intervals)
        {
            command.Add(options.level);
        }

        if (chart)
        {
            command.Add(options.chart);
        }

        return options;
    }

    public void Read(OptionWords words)
    {
        Json = words.Given(json);
        Units = words.Choice(units, ("metric", Units.Metric), ("us", Units.Us));
        Level = words.Level(level) ?? GrowthFit.DefaultLevel;
        Chart = words.Text(chart) is { } path ? OutputFile.OfChart(path, chart.Name, words.Refuse) : null;
    }

    /// <summary>Gives an answer the way it was asked for; where there is none, the status and reason are the text and no chart is drawn.</summary>
    public int Answer(bool isThere, Func<string> draw, Func<string> document, Action<Page> print, TextWriter output, TextWriter errors)
    {
        if (isThere && Chart?.Write(draw()) is { } problem)
        {
            return Exit.Refuse(errors, [problem]);
        }

        if (Json)
        {
            output.WriteLine(document());
        }
        else
        {
            print(new Page(output, Units));
        }

        return isThere ? Exit.Done : Exit.NoAnswer;
    }

    /// <summary>An answer without a chart.</summary>
    public int Answer(Func<string> document, Action<Page> print, TextWriter output, TextWriter errors, bool isThere = true) =>
        Answer(isThere, () => throw new InvalidOperationException("No chart."), document, print, output, errors);
}
