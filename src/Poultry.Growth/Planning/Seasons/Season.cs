using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>
/// Several batches, overlapping, against what they share: which of them to raise and on which days, so that the season brings most. The search is
/// exact: every choice that could be better was tried.
/// </summary>
public sealed class Season
{
    /// <summary>More batches would make the search long.</summary>
    private const int MostBatches = 16;

    private Season(IReadOnlyList<SeasonChoice> choices, IReadOnlyList<SeasonLimit> bindingLimits) => (Choices, BindingLimits) = (choices, bindingLimits);

    /// <summary>What becomes of each batch, in the order given.</summary>
    public IReadOnlyList<SeasonChoice> Choices { get; }

    /// <summary>What keeps the season from bringing more, the dearest first; empty where no limit binds.</summary>
    public IReadOnlyList<SeasonLimit> BindingLimits { get; }

    /// <summary>What the batches raised bring together.</summary>
    public Money Margin => Money.Of(Choices.Sum(choice => choice.Option?.Margin.Amount ?? 0));

    /// <summary>The season that brings most.</summary>
    /// <param name="batches">1 to 16 batches.</param>
    /// <param name="limits">What the farm and the plant can take.</param>
    /// <returns>Null where the batches that must be raised do not fit together within the limits.</returns>
    /// <exception cref="ArgumentException">No batch is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than 16 batches are given.</exception>
    public static Season? Best(IReadOnlyList<SeasonBatch> batches, SeasonLimits limits)
    {
        Require.Some(batches);
        ArgumentNullException.ThrowIfNull(limits);
        Require.Between(batches.Count, 1, MostBatches, "batches", nameof(batches));
        if (SeasonSearch.Best(batches, limits) is not { } best)
        {
            return null;
        }

        SeasonUse use = new(limits, batches);
        foreach (SeasonOption option in best.OfType<SeasonOption>())
        {
            use.Add(option, 1);
        }

        double margin = MarginOf(best);
        return new Season(
            [.. batches.Zip(best, (batch, option) => new SeasonChoice(batch, option))],
            [
                .. from limit in Raisable(limits)
                   let raised = SeasonSearch.Best(batches, limits.With(limit.Kind, limit.Day))!
                   let worth = MarginOf(raised) - margin
                   where worth > 0
                   orderby worth descending
                   let days = use.Fullest(limit.Kind, limit.Day)
                   select new SeasonLimit(limit.Kind, days.From, days.To, Money.Of(worth), raised),
            ]);
    }

    /// <summary>As in <c>3 of 4 batches, 2310.00</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Choices.Count(choice => choice.Option is not null)} of {Choices.Count} batches, {Margin.Amount:0.00}");

    private static IEnumerable<(SeasonLimitKind Kind, DateOnly? Day)> Raisable(SeasonLimits limits) =>
    [
        .. limits.BrooderPlaces is null ? [] : new (SeasonLimitKind, DateOnly?)[] { (SeasonLimitKind.BrooderPlaces, null) },
        .. limits.Shelters is null ? [] : new (SeasonLimitKind, DateOnly?)[] { (SeasonLimitKind.Shelters, null) },
        .. limits.Ground is null ? [] : new (SeasonLimitKind, DateOnly?)[] { (SeasonLimitKind.Ground, null) },
        .. limits.LabourADay is null ? [] : new (SeasonLimitKind, DateOnly?)[] { (SeasonLimitKind.Labour, null) },
        .. limits.HeadByDay.Keys.Order().Select(day => (SeasonLimitKind.PlantHead, (DateOnly?)day)),
    ];

    private static double MarginOf(SeasonOption?[] options) => options.Sum(option => option?.Margin.Amount ?? 0);
}
