using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>Where the live weight of a flock goes: live (and chill water) = carcass + named parts + losses + other, by difference.</summary>
/// <remarks>
/// That it closes proves nothing by itself, since one line is what is left over. So that line is held against what published ratios leave beside
/// the carcass, and a caution says when it is out of it.
/// </remarks>
public sealed class CarcassBalance
{
    /// <summary>Beside the carcass stay 23.9 to 35 % of live weight: published ratios go from 65 % (game hen, extension) to 76.1 % (Ross 308, 1697 g of 2229.9 g).</summary>
    private const double LeastOffal = 1 - (1697 / 2229.9), MostOffal = 0.35;

    /// <summary>After so many hours off feed the carcass itself loses weight (Buhr and Northcutt).</summary>
    private const double CarcassHoldsHours = 18;

    /// <summary>How far inputs and outputs, or a published extreme and itself, may lie apart and still be rounding of doubles.</summary>
    private const double Rounding = 1e-9;

    private readonly BalanceFlows flows;

    private CarcassBalance(LiveWeight live, PlantConditions plant)
    {
        (Live, Plant) = (live, plant);
        LiveState atKilling = AtKilling;
        LiveState ratioState = plant.Dressing.StateFor(live.State, plant.AtKilling);
        BalanceFlows Flows(Func<LikelyRange<Probability>, Probability> ratio, Func<LikelyRange<Probability>, Probability> shrink)
        {
            double Factor(LiveState from, LiveState to) => LiveWeight.Factor(from, to, plant.Withdrawal, shrink);
            Condemnation condemned = plant.Dressing.IncludesCondemned ? Condemnation.None : plant.Condemned;
            return BalanceFlows.Of(
                live.Kilograms * Factor(live.State, LiveState.FullFed),
                Factor(LiveState.FullFed, atKilling),
                ratio(plant.Dressing.Ratio).Fraction,
                Factor(LiveState.FullFed, ratioState),
                condemned.LiveShare,
                condemned.CarcassShare,
                plant.Dressing.IncludesCondemned ? 0 : plant.Trim.Fraction,
                plant.Water?.NetUptake ?? 0,
                plant.OtherParts.Sum(part => part.ShareFraction));
        }

        flows = Flows(range => range.Likely, range => range.Likely);
        // The carcass is least where the ratio is low and much is lost off feed. But birds weighed longer off feed than the ratio's state were the heavier before, the
        // more they lost: theirs is least where little is lost.
        BalanceFlows muchLost = Flows(range => range.Low, range => range.High), littleLost = Flows(range => range.Low, range => range.Low);
        Lines = muchLost.Carcass <= littleLost.Carcass
            ? LinesOf(muchLost, Flows(range => range.High, range => range.Low))
            : LinesOf(littleLost, Flows(range => range.High, range => range.High));
        Cautions = [.. CautionsOf()];
    }

    /// <summary>The equation, and where the bounds of the line by difference come from.</summary>
    public static ModelInfo Model { get; } = new(
        "carcass-balance",
        "Where the live weight goes",
        "W0 + w = C + P + L + D; 0.239 <= (P + D)/(W (1 - a)) <= 0.35",
        [
            new ModelSymbol("W0", "live weight full-fed", "kg"),
            new ModelSymbol("w", "water taken up in chilling", "kg"),
            new ModelSymbol("C", "carcass that comes back", "kg"),
            new ModelSymbol("P", "parts beside it whose share is known", "kg"),
            new ModelSymbol("L", "lost off feed, condemned and trimmed", "kg"),
            new ModelSymbol("D", "other, by difference", "kg"),
            new ModelSymbol("W", "live weight at killing", "kg"),
            new ModelSymbol("a", "share condemned before killing", "-"),
        ],
        [
            CutSources.Biesiada,
            CutSources.Extension,
            new Citation("Buhr2003", "Buhr R.J., Northcutt J.K. 2003, USDA Agricultural Research Service", HowKnown.ReadInSource, "abstract: eviscerated weight independent of hours off feed up to 18 h, then about 1 % less"),
        ],
        "Exact by construction; the bounds are the extremes of published dressing ratios and leave out heritage breeds, for which none is published.",
        HowKnown.Secondary);

    /// <summary>The live weight it starts from.</summary>
    public LiveWeight Live { get; }

    /// <summary>What happened to the birds.</summary>
    public PlantConditions Plant { get; }

    /// <summary>The state of the birds at killing.</summary>
    public LiveState AtKilling => Plant.AtKilling ?? Live.State;

    /// <summary>What comes back.</summary>
    public CarcassWeight Carcass => CarcassWeight.Of(Mass.FromKilograms(flows.Carcass), Plant.Basis);

    /// <summary>Every line: what comes in beside the birds, then what goes out.</summary>
    public IReadOnlyList<BalanceLine> Lines { get; }

    /// <summary>The live weight full-fed, to which percentages refer.</summary>
    public Mass FullFed => Mass.FromKilograms(flows.FullFed);

    /// <summary>Whether the lines, added up one by one, are the live weight and the water.</summary>
    public bool Closes
    {
        get
        {
            double water = Lines.Where(line => line.Kind == BalanceKind.WaterIn).Sum(line => line.Kilograms);
            double goesOut = Lines.Where(line => line.Kind != BalanceKind.WaterIn).Sum(line => line.Kilograms);
            return Math.Abs(flows.FullFed + water - goesOut) <= Rounding * flows.FullFed;
        }
    }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    internal BalanceFlows Flows => flows;

    /// <summary>The balance of a flock.</summary>
    /// <param name="live">The live weight of all birds, in its state.</param>
    /// <param name="plant">What happens to them.</param>
    /// <exception cref="ArgumentException">
    /// The hours off feed are needed and not given, or chill water is given for a ratio that is not hot.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">More than half of the carcass is trimmed off.</exception>
    public static CarcassBalance Of(LiveWeight live, PlantConditions plant)
    {
        ArgumentNullException.ThrowIfNull(live);
        ArgumentNullException.ThrowIfNull(plant);
        Require.Between(plant.Trim.Fraction, 0, 0.5, "", nameof(plant));
        return plant.Water is null || plant.Dressing.Basis.Condition == CarcassCondition.Hot
            ? new(live, plant)
            : throw new ArgumentException(
                "Chill water belongs to a dressing ratio of hot carcasses; " + plant.Dressing.Name + " is " + plant.Dressing.Basis + ". Expected no chill water, or a ratio that is stated to be hot.", nameof(plant));
    }

    /// <summary>One line, as in <c>1050 kg (2315 lb) live, full-fed: 733 kg (1616 lb) carcass, 69.8 %</c>, in every culture.</summary>
    public override string ToString() => Live + ": " + WeightText.Of(flows.Carcass) + " carcass"
        + string.Create(CultureInfo.InvariantCulture, $", {100 * flows.Carcass / flows.FullFed:0.#} % of the full-fed weight");

    private List<BalanceLine> LinesOf(BalanceFlows low, BalanceFlows high)
    {
        List<BalanceLine> lines = [];
        void Add(string name, BalanceKind kind, Func<BalanceFlows, double> part, double share = 1)
        {
            if (part(flows) != 0 || kind is BalanceKind.Carcass or BalanceKind.ByDifference)
            {
                lines.Add(new(name, kind, share * part(flows), share * part(low), share * part(high), flows.FullFed));
            }
        }

        double parts = Plant.OtherParts.Sum(part => part.ShareFraction);
        Add("chill water (in)", BalanceKind.WaterIn, all => all.Water);
        Add("carcass", BalanceKind.Carcass, all => all.Carcass);
        foreach (NamedPart part in Plant.OtherParts)
        {
            Add(part.Name, BalanceKind.NamedPart, all => all.OtherParts, part.ShareFraction / parts);
        }

        Add("condemned live", BalanceKind.Loss, all => all.CondemnedLive);
        Add("condemned carcasses", BalanceKind.Loss, all => all.CondemnedCarcass);
        Add("trim", BalanceKind.Loss, all => all.Trim);
        Add("lost off feed", BalanceKind.Loss, all => all.LostOffFeed);
        Add("other, by difference", BalanceKind.ByDifference, all => all.ByDifference);
        return lines;
    }

    private IEnumerable<Caution> CautionsOf()
    {
        if (flows.ByDifference < 0)
        {
            yield return new("balance-negative", "Carcass and named parts together weigh more than the birds killed, " + WeightText.Of(-flows.ByDifference)
                + " too much: one of the figures is wrong. Check the parts, the dressing ratio with its basis, and the state of the live weight.");
        }

        if (flows.OffalShare is < LeastOffal - Rounding or > MostOffal + Rounding)
        {
            yield return new("balance-implausible", string.Create(CultureInfo.InvariantCulture,
                $"Beside the carcass stay {100 * flows.OffalShare:0.#} % of the birds killed; published dressing ratios leave {100 * LeastOffal:0.#} to {100 * MostOffal:0} %. Check the ratio, its basis and the state of the live weight."));
        }

        if (Plant.Dressing.Basis.Condition is not CarcassCondition.Hot)
        {
            yield return new("water-in-carcass", "The carcass may hold water from chilling that is not told apart: the line by difference is smaller by as much.");
        }
        else if (Plant.Water is null)
        {
            yield return new("hot-weights", "The weights are hot. Packs weigh more or less by what the carcass takes up in the chiller and drips afterwards; no general figure is known, so ask the plant.");
        }

        if (AtKilling.HoursOffFeed > CarcassHoldsHours)
        {
            yield return new("carcass-loses-weight", "After more than 18 h off feed the carcass itself loses weight, about 1 %; that is not taken off here. Follow the plant's rule, and keep the fast short for the birds' sake.");
        }

        foreach (Caution caution in Flock.FeedWithdrawal.CautionsAt(Duration.FromHours(AtKilling.HoursOffFeed!.Value)))
        {
            yield return caution;
        }
    }
}
