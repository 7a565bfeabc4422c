namespace Poultry.Growth.Tests.Architecture;

/// <summary>The plan of the house: which room stands on which floor, and what each may use.</summary>
internal static class House
{
    public const string Namespace = "Poultry.Growth";

    private static readonly string[] Floor2 = ["Curves", "Weighing", "Flock"];
    private static readonly string[] Floor4 = ["Feeding", "Housing", "Carcass", "Myopathy"];
    private static readonly string[] UpTo1 = ["Evidence", "Primitives", "Numerics"];
    private static readonly string[] UpTo3 = [.. UpTo1, .. Floor2, "Fitting"];

    /// <summary>The rooms of the core, each with the other rooms that it may use.</summary>
    public static IReadOnlyDictionary<string, string[]> Rooms { get; } = new Dictionary<string, string[]>
    {
        ["Primitives"] = [],
        ["Numerics"] = ["Primitives"],
        ["Evidence"] = ["Primitives"],
        ["Curves"] = UpTo1,
        ["Weighing"] = UpTo1,
        ["Flock"] = UpTo1,
        ["Fitting"] = [.. UpTo1, .. Floor2],
        ["Feeding"] = UpTo3,
        ["Housing"] = UpTo3,
        ["Carcass"] = UpTo3,
        ["Myopathy"] = UpTo3,
        ["Planning"] = [.. UpTo3, .. Floor4],
    };

    /// <summary>What is wrong with one use of a type by the core; null where nothing is.</summary>
    public static string? Objection(TypeUse use)
    {
        string? room = RoomOf(use.UserNamespace);
        if (room is null)
        {
            return $"{use.User} lives in {use.UserNamespace}, which is no room of the house";
        }

        string? why = RoomOf(use.UsedNamespace) is { } used ? ObjectionToRoom(room, used, use.Used) : ObjectionToOutside(room, use);
        return why is null ? null : $"{use.User}: {use.Member} uses {use.Used}: {why}";
    }

    /// <summary>The room that a namespace is; null outside the house.</summary>
    public static string? RoomOf(string typeNamespace) =>
        typeNamespace.StartsWith(Namespace + ".", StringComparison.Ordinal) && Rooms.ContainsKey(typeNamespace[(Namespace.Length + 1)..])
            ? typeNamespace[(Namespace.Length + 1)..]
            : null;

    private static string? ObjectionToRoom(string room, string used, string type) =>
        used != room && !Rooms[room].Contains(used) ? $"{room} may use {string.Join(", ", Rooms[room].DefaultIfEmpty("no other room"))}"
        : Floor4.Contains(room) && type == "Poultry.Growth.Fitting.Projection" ? $"{room} takes a growth curve, or a draw of curves, from its caller"
        : null;

    private static string? ObjectionToOutside(string room, TypeUse use) => use.UsedNamespace switch
    {
        _ when Within(use.UsedNamespace, Namespace) => "it lives in no room of the house",
        _ when Within(use.UsedNamespace, "MathNet") && room != "Numerics" => "MathNet stays behind Numerics",
        _ when Within(use.UsedNamespace, "UnitsNet") && room == "Numerics" => "Numerics knows doubles only",
        _ when use.Used == "System.Console" => "the library returns results, it does not print",
        _ when Within(use.UsedNamespace, "System.IO") => "files are the business of Poultry.Growth.Files",
        // An indexer is marked with this attribute by the compiler.
        _ when Within(use.UsedNamespace, "System.Reflection") && use.Used != "System.Reflection.DefaultMemberAttribute" =>
            "the library must run compiled ahead of time, without reflection",
        _ => null,
    };

    private static bool Within(string typeNamespace, string outer) =>
        typeNamespace == outer || typeNamespace.StartsWith(outer + ".", StringComparison.Ordinal);
}
