using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>Reads which birds stay whole and which are cut into what from a table of text (CSV). The format is in docs/file-formats.md.</summary>
/// <remarks>Nothing in a file makes this throw: every problem is found in one pass and told with its line and column.</remarks>
public static class CutOrderFile
{
    private const string Rules = "heaviest-first, as-they-come or by-weight";

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is. A file that is missing, unreadable or not text is a problem of the result, not an exception.</param>
    /// <param name="sets">The sets of cuts that the file may name.</param>
    public static FileReading<CutOrder> Read(string path, IReadOnlyList<CutSet> sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        return NamedTable.ReadFile(path, ["cut"], ["birds", "from", "to"], (statements, rows, problems) => Make(statements, rows, sets, problems));
    }

    private static CutOrder? Make(IReadOnlyList<NamedComment> statements, IReadOnlyList<NamedRow> rows, IReadOnlyList<CutSet> sets, ProblemList problems)
    {
        CutOrderRule? rule = Rule(statements, problems);
        string names = string.Join(", ", sets.Select(set => set.Name).Prepend(CutOrderLine.WholeBird));
        List<CutOrderLine> lines = [];
        double sum = 0;
        foreach (NamedRow row in rows)
        {
            string name = row.Text("cut", names);
            CutSet? set = sets.FirstOrDefault(known => known.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (set is null && name.Length > 0 && !name.Equals(CutOrderLine.WholeBird, StringComparison.OrdinalIgnoreCase))
            {
                row.Refuse(row.Cell("cut"), "cut", "is unknown", names);
            }

            double? share = row.Quantity<double>("birds", QuantityText.TryPercent);
            Mass? from = row.Quantity<Mass>("from", QuantityText.TryMass), to = row.Quantity<Mass>("to", QuantityText.TryMass);
            bool byWeight = rule == CutOrderRule.ByWeight;
            if (byWeight && row.Cell("birds") is { } birds)
            {
                row.Refuse(birds, "birds", "stands beside the rule by-weight", "from and to");
            }
            else if (rule is not null && !byWeight && (row.Cell("from") ?? row.Cell("to")) is { } weight)
            {
                row.Refuse(weight, "weight", "does not go with the rule", "a share of the birds, or # rule: by-weight");
            }
            else if (rule is not null && !byWeight && row.Cell("birds") is null)
            {
                row.Refuse(null, "birds", "is missing", "a share of the birds, as in 40%");
            }
            else if (share is > 1)
            {
                row.Refuse(row.Cell("birds"), "birds", "is out of range", "a share up to 100%");
            }
            else if (row.Make(() => byWeight ? CutOrderLine.Of(set, from, to) : CutOrderLine.Of(set, Probability.FromFraction(share ?? 0)), "weight") is { } line)
            {
                lines.Add(line);
                sum += share ?? 0;
            }
        }

        if (problems.Count == 0 && rule is not CutOrderRule.ByWeight && Math.Abs(sum - 1) > 1e-6)
        {
            problems.Add("birds", null, string.Create(CultureInfo.InvariantCulture, $"are {100 * sum:0.##} % together"), "100 %");
        }

        return problems.Count > 0 ? null : Order(rule!.Value, lines, problems);
    }

    private static CutOrder? Order(CutOrderRule rule, List<CutOrderLine> lines, ProblemList problems)
    {
        try
        {
            return rule switch
            {
                CutOrderRule.HeaviestFirst => CutOrder.HeaviestFirst(lines),
                CutOrderRule.AsTheyCome => CutOrder.AsTheyCome(lines),
                _ => CutOrder.ByWeight(lines),
            };
        }
        catch (ArgumentException exception)
        {
            (string fault, string expected) = ProblemList.Said(exception);
            problems.Add("order", null, fault, expected);
            return null;
        }
    }

    private static CutOrderRule? Rule(IReadOnlyList<NamedComment> statements, ProblemList problems)
    {
        NamedComment[] stated = [.. statements.Where(statement => statement.Is("rule"))];
        if (stated.Length == 0)
        {
            problems.Add("rule", null, "is not stated", "a line \"# rule: heaviest-first\", as-they-come or by-weight");
            return null;
        }

        stated[^1].Once(stated.Length > 1, problems);
        CutOrderRule? rule = stated[0].Value.Text.ToUpperInvariant() switch
        {
            "HEAVIEST-FIRST" => CutOrderRule.HeaviestFirst,
            "AS-THEY-COME" => CutOrderRule.AsTheyCome,
            "BY-WEIGHT" => CutOrderRule.ByWeight,
            _ => null,
        };
        if (rule is null)
        {
            problems.Add(stated[0].Value, "rule", "is unknown", Rules);
        }

        return rule;
    }
}
