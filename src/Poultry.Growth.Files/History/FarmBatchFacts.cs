using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Fitting;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>What the # lines of a weigh-in file in a farm's history say of a finished batch; <see cref="FarmBatchText"/> writes them.</summary>
internal sealed class FarmBatchFacts
{
    /// <summary>Lines of which all or none are needed.</summary>
    private static readonly ImmutableArray<string> Losses = ["placed_birds", "lost_birds", "age_at_killing"], Feed = ["feed_eaten", "feed_expected", "feed_model"], Dressing = ["live_weight", "off_feed", "carcass_weight"];

    private readonly Dictionary<string, CsvCell> lines = new(StringComparer.OrdinalIgnoreCase);
    private readonly ProblemList problems;
    private readonly Age? ageAtPlacement;

    private FarmBatchFacts(IEnumerable<NamedComment> statements, Age? ageAtPlacement, ProblemList problems)
    {
        (this.ageAtPlacement, this.problems) = (ageAtPlacement, problems);
        string[] known = [.. Losses, .. Feed, .. Dressing, "killed", "road", "neck", "giblets", "feet"];
        foreach (NamedComment statement in statements.Where(statement => known.Contains(statement.Name, StringComparer.OrdinalIgnoreCase)))
        {
            statement.Once(lines.ContainsKey(statement.Name), problems);
            lines[statement.Name] = statement.Value;
        }

        foreach (ImmutableArray<string> group in new[] { Losses, Feed, Dressing }.Where(group => group.Any(lines.ContainsKey)))
        {
            foreach (string missing in group.Where(name => !lines.ContainsKey(name)))
            {
                problems.Add(missing, null, "is not stated", "a line \"# " + missing + ":\" beside " + string.Join(" and ", group.Where(lines.ContainsKey)));
            }
        }

        if (lines.ContainsKey(Losses[0]) && ageAtPlacement is null)
        {
            problems.Add(FarmBatchText.AgeAtPlacement, null, "is not stated", "a line \"# " + FarmBatchText.AgeAtPlacement + ":\" beside " + Losses[0]);
        }
    }

    /// <summary>The lines of a file that was read as weigh-ins; null, and problems, where they make no sense.</summary>
    public static FarmBatchFacts? Read(string path, Age? ageAtPlacement, ProblemList problems)
    {
        // What is wrong with the table itself was told when it was read as weigh-ins.
        ProblemList told = new(problems.File);
        FarmBatchFacts facts = new(TextFile.Read(path, told) is { } text ? Csv.Of(text, told).Statements : [], ageAtPlacement, problems);
        if (problems.Count == 0)
        {
            // Once for what is wrong with it, while problems are gathered.
            _ = facts.Batch(null, null);
        }

        return problems.Count == 0 ? facts : null;
    }

    /// <summary>The batch with its facts.</summary>
    [return: NotNullIfNotNull(nameof(weights))]
    public FarmBatch? Batch(PastBatch? weights, LesionInspection? inspection)
    {
        DateOnly? killed = Value<DateOnly>("killed", QuantityText.TryDate);
        PastLosses? losses = Made(Losses, () => PastLosses.Of(Whole("placed_birds") ?? 0, Whole("lost_birds") ?? 0, ageAtPlacement!.Value, Value<Age>("age_at_killing", QuantityText.TryAge) ?? default));
        PastFeed? feed = Made(Feed, () => PastFeed.Of(Weight("feed_eaten"), Weight("feed_expected"), lines["feed_model"].Text));
        LiveState? state = Made(Dressing, () => LiveState.OffFeed(Value<Duration>("off_feed", QuantityText.TryDuration) ?? default, Value<Duration>("road", QuantityText.TryDuration)));
        PastDressing? dressed = state is null ? null : Made(Dressing, () => PastDressing.Weighed([Carcass(state)]));
        return weights is null ? null : new FarmBatch { Weights = weights, Killed = killed, Losses = losses, Feed = feed, Dressed = dressed is null ? null : Carcass(state!), Inspection = inspection };
    }

    private (LiveWeight, CarcassWeight) Carcass(LiveState state) => (
        LiveWeight.Of(Weight("live_weight"), state), CarcassWeight.Of(Weight("carcass_weight"), CarcassBasis.Of(CarcassCondition.Packed, Part("neck"), Part("giblets"), Part("feet"))));

    private T? Value<T>(string name, QuantityReader<T> read)
        where T : struct
    {
        if (!lines.TryGetValue(name, out CsvCell cell))
        {
            return null;
        }

        if (read(cell.Text, out T value, out string? problem))
        {
            return value;
        }

        problems.Add(cell, name, "cannot be read", problem[(problem.IndexOf("; ", StringComparison.Ordinal) + 2)..].Replace("expected ", "", StringComparison.Ordinal));
        return null;
    }

    private Mass Weight(string name) => Value<Mass>(name, QuantityText.TryMass) ?? default;

    private int? Whole(string name)
    {
        if (int.TryParse(lines[name].Text, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return number;
        }

        problems.Add(lines[name], name, "is no number of birds", "a whole number, 0 or more");
        return null;
    }

    private Inclusion Part(string name)
    {
        if (!lines.TryGetValue(name, out CsvCell cell))
        {
            return Inclusion.NotStated;
        }

        Inclusion? part = cell.Text.ToUpperInvariant() switch { "WITH" => Inclusion.With, "WITHOUT" => Inclusion.Without, _ => null };
        if (part is null)
        {
            problems.Add(cell, name, "is unknown", "with or without");
        }

        return part ?? Inclusion.NotStated;
    }

    /// <summary>Makes something of a group of lines that is there; what the library refuses is told at its first line.</summary>
    private T? Made<T>(ImmutableArray<string> group, Func<T> make)
        where T : class
    {
        if (!lines.ContainsKey(group[0]))
        {
            return null;
        }

        int before = problems.Count;
        try
        {
            T made = make();
            return problems.Count == before ? made : null;
        }
        catch (ArgumentException exception)
        {
            // A line that cannot be read was told already.
            if (problems.Count == before)
            {
                (string fault, string expected) = ProblemList.Said(exception, "makes no sense with the lines beside it");
                problems.Add(lines[group[0]], group[0], fault, expected);
            }

            return null;
        }
    }
}
