using System.Text.Json;
using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The answer of <c>cuts</c> for programs. Money is in the currency of the prices.</summary>
internal sealed record CutsDocument
{
    public required int Birds { get; init; }

    public required double LiveKg { get; init; }

    /// <summary>Hours off feed when weighed and at killing.</summary>
    public required double WeighedOffFeedHours { get; init; }

    public required double KilledOffFeedHours { get; init; }

    public required DressingNode Dressing { get; init; }

    public required IReadOnlyList<BalanceNode> Balance { get; init; }

    public required bool Closes { get; init; }

    /// <summary>Water in the chilled carcass, of the weight before chilling and of that after; null where no uptake was stated.</summary>
    public required double? RetainedWaterPercentOfHot { get; init; }

    public required double? RetainedWaterPercentOfChilled { get; init; }

    public required IReadOnlyList<CutLineNode> Lines { get; init; }

    public required IReadOnlyList<PieceNode> Pieces { get; init; }

    public required IReadOnlyList<PackNode> Packs { get; init; }

    public required double NotPackedKg { get; init; }

    public required double Revenue { get; init; }

    public required double LowRevenue { get; init; }

    public required double HighRevenue { get; init; }

    /// <summary>Less cutting and packing.</summary>
    public required double Value { get; init; }

    public required double LowValue { get; init; }

    public required double HighValue { get; init; }

    public required double ValuePerLiveKg { get; init; }

    public required double LowValuePerLiveKg { get; init; }

    public required double HighValuePerLiveKg { get; init; }

    /// <summary>For a kg of cuts; null where no bird is cut or whole birds have no price.</summary>
    public required double? BreakEvenPremium { get; init; }

    public required double? LowBreakEvenPremium { get; init; }

    public required double? HighBreakEvenPremium { get; init; }

    public required double? Premium { get; init; }

    public required double? LowPremium { get; init; }

    public required double? HighPremium { get; init; }

    /// <summary>null without prices.</summary>
    public required AdviceNode? Advice { get; init; }

    public required IReadOnlyList<CautionNode> Cautions { get; init; }

    public required IReadOnlyList<SourceNode> Sources { get; init; }

    public static CutsDocument Of(CutsAnswer answer)
    {
        PlantReturn back = answer.Return;
        double? Low(Func<PlantReturn, double?> of) => new[] { of(back), of(answer.Light), of(answer.Heavy) }.Min();
        double? High(Func<PlantReturn, double?> of) => new[] { of(back), of(answer.Light), of(answer.Heavy) }.Max();
        return new()
        {
            Birds = back.Birds.Birds,
            LiveKg = back.Birds.Weights.Mean.Kilograms,
            WeighedOffFeedHours = back.Birds.Total.State.HoursOffFeed!.Value,
            KilledOffFeedHours = back.Balance.AtKilling.HoursOffFeed!.Value,
            Dressing = DressingNode.Of(back.Balance.Plant.Dressing),
            Balance = BalanceNode.Of(back.Balance),
            Closes = back.Balance.Closes,
            RetainedWaterPercentOfHot = back.Balance.Plant.Water?.PercentRetainedOfHot,
            RetainedWaterPercentOfChilled = back.Balance.Plant.Water?.PercentRetainedOfChilled,
            Lines = CutLineNode.Of(answer),
            Pieces = PieceNode.Of(answer),
            Packs = PackNode.Of(answer),
            NotPackedKg = back.NotPacked.Kilograms,
            Revenue = back.Revenue.Amount,
            LowRevenue = Low(one => one.Revenue.Amount)!.Value,
            HighRevenue = High(one => one.Revenue.Amount)!.Value,
            Value = back.Value.Amount,
            LowValue = Low(one => one.Value.Amount)!.Value,
            HighValue = High(one => one.Value.Amount)!.Value,
            ValuePerLiveKg = back.ValuePerLiveKilogram,
            LowValuePerLiveKg = Low(one => one.ValuePerLiveKilogram)!.Value,
            HighValuePerLiveKg = High(one => one.ValuePerLiveKilogram)!.Value,
            BreakEvenPremium = back.BreakEvenPremiumPerKilogram?.Amount,
            LowBreakEvenPremium = Low(one => one.BreakEvenPremiumPerKilogram?.Amount),
            HighBreakEvenPremium = High(one => one.BreakEvenPremiumPerKilogram?.Amount),
            Premium = back.PremiumPerKilogram?.Amount,
            LowPremium = Low(one => one.PremiumPerKilogram?.Amount),
            HighPremium = High(one => one.PremiumPerKilogram?.Amount),
            Advice = AdviceNode.Of(answer.Advice),
            Cautions = CautionNode.Of(answer.Cautions),
            Sources = SourceNode.Of(answer.Sources),
        };
    }

    public string ToJson() => JsonSerializer.Serialize(this, Documents.Readable.CutsDocument);
}
