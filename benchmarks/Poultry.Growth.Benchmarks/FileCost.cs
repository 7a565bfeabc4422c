using System.Globalization;
using System.Text;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using Poultry.Growth.Files;

namespace Poultry.Growth.Benchmarks;

/// <summary>Ten thousand lines of weighed birds read and checked, and a batch file with its tables. Beside it what reads figures and checks nothing: split and parse, and System.Text.Json's document.</summary>
[MemoryDiagnoser]
public class FileCost
{
    private static readonly JsonDocumentOptions Tolerant = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private readonly string weighIns = Table();
    private readonly string batch;

    /// <summary>The batch file is the template of the package.</summary>
    public FileCost()
    {
        string folder = Directory.CreateTempSubdirectory("poultry-growth-benchmark").FullName;
        BatchTemplates.Write(folder, TemplateUnits.Metric);
        batch = Path.Combine(folder, "batch.json");
    }

    /// <summary>Every line split and parsed.</summary>
    [Benchmark(Baseline = true)]
    public double SplitAndParse()
    {
        using StringReader reader = new(weighIns);
        reader.ReadLine();
        double sum = 0;
        while (reader.ReadLine() is { } line)
        {
            string[] cells = line.Split(',');
            sum += double.Parse(cells[0], CultureInfo.InvariantCulture) * double.Parse(cells[1], CultureInfo.InvariantCulture);
        }

        return sum;
    }

    /// <summary>The reader of weigh-ins.</summary>
    [Benchmark]
    public WeighInReading ReadWeighIns()
    {
        using StringReader reader = new(weighIns);
        return WeighInFile.ReadText(reader, "weigh-ins.csv");
    }

    /// <summary>The batch file as a document, its tables left alone.</summary>
    [Benchmark]
    public JsonValueKind JsonDocumentOnly()
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(batch), Tolerant);
        return document.RootElement.ValueKind;
    }

    /// <summary>The batch file with all tables that it names, checked.</summary>
    [Benchmark]
    public BatchFileReading ReadBatch() => BatchFile.Read(batch);

    private static string Table()
    {
        StringBuilder text = new("age_d,weight_g\n");
        for (int line = 0; line < 10_000; line++)
        {
            int day = 7 * (1 + (line / 1250));
            text.Append(CultureInfo.InvariantCulture, $"{day},{(60 * day) + (line % 97)}\n");
        }

        return text.ToString();
    }
}
