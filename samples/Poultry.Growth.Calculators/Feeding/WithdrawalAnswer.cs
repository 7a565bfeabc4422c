using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Flock;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>A fast, and what it costs in live weight.</summary>
internal sealed class WithdrawalAnswer(Mass weight, Duration offFeed, Duration onRoad)
{
    public Mass Weight => weight;

    public Duration OffFeed => offFeed;

    public Duration OnRoad => onRoad;

    public LiveShrink Shrink { get; } = WithdrawalShrink.Of(weight, offFeed, onRoad);

    public static IReadOnlyList<Citation> Sources => FeedWithdrawal.Model.Citations;
}
