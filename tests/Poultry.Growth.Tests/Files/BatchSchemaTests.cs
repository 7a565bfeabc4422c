extern alias Schemas;

using System.Text.Json;
using System.Text.Json.Nodes;
using Poultry.Growth.Files;
using Poultry.Growth.Tests.ConsoleRuns;
using Schemas::Json.Schema;

namespace Poultry.Growth.Tests.Files;

/// <summary>The schemas of docs/schema say what the readers read: the same names, the same words, no more and no less.</summary>
public sealed class BatchSchemaTests : IDisposable
{
    private const string Unknown = "zzzzzzzzzzzz";

    /// <summary>Every section that there is, each with a name that nobody knows.</summary>
    private static readonly string EverySection = """
        { "ageAtPlacement": "1d", "birds": 1, "@": 0,
          "weights": { "@": 0 },
          "temperatures": { "@": 0, "moveOut": "21d", "outside": [ { "@": 0, "from": "0d", "temperature": "14C" } ] },
          "feed": { "@": 0, "phases": [ { "@": 0 } ], "pasture": { "@": 0 } },
          "plant": { "@": 0, "dates": [ { "@": 0 } ] },
          "selling": { "@": 0 }, "costs": { "@": 0 }, "shelters": { "@": 0 } }
        """.Replace("@", Unknown, StringComparison.Ordinal);

    /// <summary>Temperatures of a house, which do not go together with those outside.</summary>
    private static readonly string AHouse = "{ \"temperatures\": { \"house\": [ { \"@\": 0 } ] } }".Replace("@", Unknown, StringComparison.Ordinal);

    private static readonly string EverySectionOfASeason = """
        { "@": 0, "limits": { "@": 0 }, "plant": { "@": 0, "dates": [ { "@": 0 } ] }, "batches": [ { "@": 0, "placed": { "@": 0 } } ] }
        """.Replace("@", Unknown, StringComparison.Ordinal);

    private readonly Scratch scratch = new();

    public static TheoryData<string> BatchFiles() => ["samples/Poultry.Growth.Calculators/data/meadow-batch.json"];

    public static TheoryData<string> Structural() => [.. BrokenBatch.All.Where(broken => broken.IsStructural).Select(broken => broken.Name)];

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void A_batch_has_the_names_that_the_reader_knows() =>
        Names("batch").Should().BeEquivalentTo(Asked([.. BatchFile.Read(scratch.Write("b.json", EverySection)).Problems, .. BatchFile.Read(scratch.Write("c.json", AHouse)).Problems]));

    [Fact]
    public void A_season_has_the_names_that_the_reader_knows() =>
        Names("season").Should().BeEquivalentTo(Asked(SeasonFile.Read(scratch.Write("s.json", EverySectionOfASeason)).Problems));

    [Theory]
    [InlineData("sex", "{ \"sex\": \"?\" }")]
    [InlineData("type", "{ \"type\": \"?\" }")]
    [InlineData("feed.model", "{ \"feed\": { \"model\": \"?\" } }")]
    [InlineData("plant.dates[0].booked", "{ \"plant\": { \"dates\": [ { \"booked\": \"?\" } ] } }")]
    public void Words_to_choose_from_are_the_same(string path, string text)
    {
        IReadOnlyList<FileProblem> problems = BatchFile.Read(scratch.Write("b.json", text.Replace("?", Unknown, StringComparison.Ordinal))).Problems;

        JsonNode at = Sections(Schema("batch"))[path.Contains('.', StringComparison.Ordinal) ? path[..path.LastIndexOf('.')].Replace("[0]", "[]", StringComparison.Ordinal) : ""]["properties"]![path.Split('.')[^1]]!;
        at["enum"]!.AsArray().Select(word => (string)word!).Should().BeEquivalentTo(problems.Single(problem => problem.Field == path).Expected.Split(", "));
    }

    [Theory]
    [InlineData("batch")]
    [InlineData("season")]
    public void Everything_has_a_title_and_a_description(string schema)
    {
        foreach ((string path, JsonNode section) in Sections(Schema(schema)))
        {
            foreach ((string name, JsonNode? property) in section["properties"]!.AsObject())
            {
                JsonNode said = property!["title"] is null ? Resolved(property, Schema(schema)) : property;
                ((string?)said["title"]).Should().NotBeNullOrWhiteSpace($"{path}.{name} has a title");
                (said["description"] ?? said["anyOf"]).Should().NotBeNull($"{path}.{name} has a description");
            }
        }
    }

    [Theory]
    [MemberData(nameof(BatchFiles))]
    public void Our_own_files_keep_to_it(string path) => Holds("batch", File.ReadAllText(Repository.PathOf(path))).Should().BeTrue();

    [Theory]
    [InlineData(TemplateUnits.Metric)]
    [InlineData(TemplateUnits.UnitedStates)]
    public void Templates_keep_to_it(TemplateUnits units) => Holds("batch", BatchTemplates.Text("batch.json", units)).Should().BeTrue();

    [Fact]
    public void The_demo_season_keeps_to_it() =>
        Holds("season", File.ReadAllText(Repository.PathOf("samples/Poultry.Growth.Calculators/data/meadow-season.json"))).Should().BeTrue();

    [Theory]
    [MemberData(nameof(Structural))]
    public void Files_with_a_structure_that_cannot_be_do_not_keep_to_it(string name)
    {
        BatchTemplates.Write(scratch.PathOf("batch"), TemplateUnits.Metric);
        foreach (BrokenFile file in BrokenBatch.All.Single(broken => broken.Name == name).Files)
        {
            file.Spoil(scratch.PathOf("batch"));
        }

        Holds("batch", File.ReadAllText(scratch.PathOf("batch/batch.json"))).Should().BeFalse();
    }

    private static bool Holds(string schema, string text) => JsonSchema.FromText(Schema(schema).ToJsonString()).Evaluate(
        JsonNode.Parse(text, documentOptions: new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true })).IsValid;

    private static JsonNode Schema(string name) => JsonNode.Parse(File.ReadAllText(Repository.PathOf($"docs/schema/{name}.schema.json")))!;

    /// <summary>The names that the reader asked for, section by section, from what it says of one that it does not know.</summary>
    private static Dictionary<string, string[]> Asked(IReadOnlyList<FileProblem> problems) => problems
        .Where(problem => problem.Field.EndsWith(Unknown, StringComparison.Ordinal))
        .ToDictionary(
            problem => problem.Field[..^Unknown.Length].TrimEnd('.').Replace("[0]", "[]", StringComparison.Ordinal),
            problem => problem.Expected.Split(", ").Order(StringComparer.Ordinal).ToArray());

    private static Dictionary<string, string[]> Names(string schema) => Sections(Schema(schema)).ToDictionary(
        section => section.Key,
        section => section.Value["properties"]!.AsObject().Select(property => property.Key).Where(name => name != "$schema").Order(StringComparer.Ordinal).ToArray());

    private static Dictionary<string, JsonNode> Sections(JsonNode schema)
    {
        Dictionary<string, JsonNode> found = [];
        Collect(schema, "");
        return found;

        void Collect(JsonNode at, string path)
        {
            JsonNode node = Resolved(at, schema);
            if (node["properties"] is JsonObject properties)
            {
                found[path] = node;
                node["additionalProperties"]!.GetValue<bool>().Should().BeFalse($"{path} names all that may stand there");
                foreach ((string name, JsonNode? property) in properties)
                {
                    Collect(property!, path.Length == 0 ? name : path + "." + name);
                }
            }

            if (node["items"] is { } items)
            {
                Collect(items, path + "[]");
            }

            foreach (JsonNode? choice in node["anyOf"]?.AsArray() ?? [])
            {
                Collect(choice!, path);
            }
        }
    }

    private static JsonNode Resolved(JsonNode node, JsonNode schema) => (string?)node["$ref"] is { } name ? schema["$defs"]![name.Split('/')[^1]]! : node;
}
