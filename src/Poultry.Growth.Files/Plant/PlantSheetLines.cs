using System.Collections.Immutable;
using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;
using static Poultry.Growth.Files.PlantSheetCells;

namespace Poultry.Growth.Files;

/// <summary>The rows of a plant's sheet as they are read: each kind of line has cells that it needs, and others that make no sense on it.</summary>
internal sealed class PlantSheetLines(ProblemList problems)
{
    /// <summary>Kinds of lines with one count of birds, each at most once in a sheet.</summary>
    private static readonly ImmutableArray<string> Counts = ["delivered", "dead-on-arrival", "passed", "kept", "dead", "culled", "missing", "on-hand", "opened"];

    private static readonly ImmutableArray<string> Kinds = [.. Counts, "condemned", "condemned-parts", "packed", "giblets", "feed-eaten", "lesion"];

    private readonly Dictionary<string, (int Birds, NamedRow Row)> counts = new(StringComparer.OrdinalIgnoreCase);
    private readonly PlantSheetLesions lesions = new();
    private readonly List<CondemnedLine> condemned = [];
    private readonly List<PackedLine> packs = [];
    private Mass? live, giblets, feed;

    public void Add(NamedRow row)
    {
        string expected = string.Join(", ", Kinds);
        string kind = row.Text("line", expected) is { Length: > 0 } given ? Kinds.FirstOrDefault(known => known.Equals(given, StringComparison.OrdinalIgnoreCase)) ?? "" : "";
        switch (kind)
        {
            case "":
                if (row.Cell("line") is { } unknown)
                {
                    row.Refuse(unknown, "line", "is no line of a plant's sheet", expected);
                }

                break;
            case "condemned" or "condemned-parts":
                AddCondemned(row, isWhole: kind == "condemned");
                break;
            case "packed":
                AddPacked(row);
                break;
            case "giblets":
                giblets = AddWeight(row, kind, giblets, "all giblets that were packed by themselves, as in 31lb");
                break;
            case "feed-eaten":
                feed = AddWeight(row, kind, feed, "all feed that the batch ate: delivered less what was left, as in 4700lb");
                break;
            case "lesion":
                lesions.Add(row);
                break;
            default:
                AddCount(row, kind);
                break;
        }
    }

    /// <summary>What only all rows together show.</summary>
    public void Close()
    {
        if (!counts.ContainsKey("delivered") && problems.Count == 0)
        {
            problems.Add("delivered", null, "is not stated", "a line delivered with the birds unloaded, dead ones among them");
        }

        int delivered = Birds("delivered");
        if (counts.TryGetValue("dead-on-arrival", out (int Birds, NamedRow Row) dead) && delivered > 0 && dead.Birds + Condemned > delivered)
        {
            dead.Row.Refuse(dead.Row.Cell("count"), "count", "is, with the birds condemned, more than were delivered", "birds of those delivered");
        }

        if (counts.TryGetValue("kept", out (int Birds, NamedRow Row) kept) && kept.Birds > (counts.ContainsKey("passed") ? Birds("passed") : delivered))
        {
            kept.Row.Refuse(kept.Row.Cell("count"), "count", "is more than passed", "birds of those that passed");
        }

        lesions.Close(counts.TryGetValue("opened", out (int Birds, NamedRow Row) opened) ? opened.Birds : null, problems);
    }

    /// <summary>The sheet; only where no problem was found.</summary>
    public PlantSheet Sheet(DateOnly killed, CarcassBasis basis) => new()
    {
        Killed = killed,
        Delivered = Birds("delivered"),
        LiveWeight = live,
        DeadOnArrival = Birds("dead-on-arrival"),
        Condemned = condemned,
        Passed = counts.ContainsKey("passed") ? Birds("passed") : null,
        Kept = Birds("kept"),
        Dead = Birds("dead"),
        Culled = Birds("culled"),
        Missing = Birds("missing"),
        OnHand = Birds("on-hand"),
        Packs = packs,
        Giblets = giblets,
        FeedEaten = feed,
        Basis = basis,
        Opened = Birds("opened"),
        Lesions = lesions.Counts,
    };

    private long Condemned => condemned.Where(line => line.IsWholeBirds).Sum(line => (long)line.Birds);

    private int Birds(string kind) => counts.TryGetValue(kind, out (int Birds, NamedRow Row) count) ? count.Birds : 0;

    private static Mass? AddWeight(NamedRow row, string kind, Mass? before, string expected)
    {
        OnlyOnce(row, before is not null);
        Nothing(row, kind, "what", "pieces_per_pack", "from", "to", "count", "money");
        Mass? weight = Weight(row, expected);
        if (weight?.Kilograms == 0)
        {
            row.Refuse(row.Cell("weight"), "weight", "is out of range", expected);
        }

        return weight;
    }

    private void AddCount(NamedRow row, string kind)
    {
        OnlyOnce(row, counts.ContainsKey(kind));
        Nothing(row, kind, "what", "pieces_per_pack", "from", "to", "money");
        int? birds = Count(row, kind is "delivered" or "opened" ? 1 : 0);
        if (kind != "delivered")
        {
            Nothing(row, kind, "weight");
        }
        else if (row.Quantity<Mass>("weight", QuantityText.TryMass) is { } weight)
        {
            live = weight;
            if (birds is { } head && weight.Kilograms / head is < 0.2 or > 12)
            {
                row.Refuse(row.Cell("weight"), "weight", "does not fit the number of birds", "the live weight of all birds delivered: 0.2kg to 12kg each");
            }
        }

        counts[kind] = (birds ?? 0, row);
    }

    private void AddCondemned(NamedRow row, bool isWhole)
    {
        string kind = isWhole ? "condemned" : "condemned-parts";
        Nothing(row, kind, "pieces_per_pack", "from", "to", "money");
        if (isWhole)
        {
            Nothing(row, kind, "weight");
        }

        string reason = Word(row, "the reason, in the inspector's words");
        int? birds = Count(row);
        Mass? weight = row.Quantity<Mass>("weight", QuantityText.TryMass);
        if (reason.Length > 0 && birds is { } count)
        {
            condemned.Add(isWhole ? CondemnedLine.Whole(reason, count) : CondemnedLine.Parts(reason, count, weight));
        }
    }

    private void AddPacked(NamedRow row)
    {
        string piece = Word(row, "a piece of the set of cuts, or whole");
        int perPack = (int)(row.Number("pieces_per_pack", 1, 1000, whole: true) ?? 1);
        Mass? from = row.Quantity<Mass>("from", QuantityText.TryMass), to = row.Quantity<Mass>("to", QuantityText.TryMass);
        int? count = Count(row);
        Mass? weight = Weight(row, "all packs of the line together, as in 212.4kg");
        Money? money = row.Quantity<Money>("money", QuantityText.TryMoney);
        if (packs.Any(pack => pack.PiecesPerPack == perPack && pack.Piece.Equals(piece, StringComparison.OrdinalIgnoreCase) && Same(pack.From, from) && Same(pack.To, to)))
        {
            row.Refuse(row.Cell("what"), "what", "stands there a second time", "one line a kind of pack");
        }

        if (piece.Length > 0 && count is { } number && weight is { } all
            && row.Make(() => PackedLine.Of(piece, perPack, number, all).Weighing(from, to), "row") is { } line)
        {
            packs.Add(money is { } taken ? line.Taking(taken) : line);
        }
    }

    private static bool Same(Mass? one, Mass? other) => one?.Kilograms == other?.Kilograms;
}
