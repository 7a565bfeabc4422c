using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>What a text asks for some birds, for programs.</summary>
internal sealed record EquipmentNode
{
    public required string Item { get; init; }

    public required double Amount { get; init; }

    /// <summary>cm, pieces or m3/h.</summary>
    public required string Unit { get; init; }

    public required string Source { get; init; }

    public required string Applies { get; init; }

    public required string Why { get; init; }

    public required bool Unverified { get; init; }

    public static EquipmentNode Of(EquipmentNeed need) => new()
    {
        Item = need.Item,
        Amount = need.Edge?.Centimeters ?? need.Pieces ?? need.AirCapacity!.Value.CubicMetersPerHour,
        Unit = need.Edge is not null ? "cm" : need.Pieces is not null ? "pieces" : "m3/h",
        Source = need.Verdict.Limit.ToString(),
        Applies = Codes.Of(need.Verdict.Applies),
        Why = need.Verdict.Why,
        Unverified = need.Verdict.Limit.IsUnverified,
    };
}
