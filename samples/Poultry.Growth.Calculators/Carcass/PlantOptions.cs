using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>What the plant does: dressing, chilling, losses, parts beside the carcass, charges.</summary>
internal sealed class PlantOptions
{
    private readonly Option<string?> type = new("--type") { HelpName = "fast|slow|heritage", Description = "The kind of bird, for a dressing ratio to plan with. [default: fast]" };

    private readonly Option<string?> dressing = new("--dressing")
    {
        HelpName = "71%|NAME", Description = "Your own packed weight over live weight in the state of --live-state, pooled with the book's; or a published ratio by name (docs/carcass.md).",
    };

    private readonly Option<string?> batches = new("--own-batches") { HelpName = "4", Description = "How many batches stand behind your own ratio: the more, the less the book counts. [default: 1]" };

    private readonly Option<string?> basis = new("--basis")
    {
        HelpName = "packed,neck", Description = "What your own ratio was weighed with: hot, chilled or packed; neck or no-neck, giblets or no-giblets, feet or no-feet. [default: packed]",
    };

    private readonly Option<string?> chill = new("--chill") { HelpName = "4%", Description = "Taken up in the chiller, of the hot weight; only for a ratio that is hot. No general figure is known: ask the plant." };

    private readonly Option<string?> drip = new("--drip") { HelpName = "1%", Description = "Dripped again before packing, of the hot weight." };

    private readonly Option<string?> condemnedLive = new("--condemned-live") { HelpName = "0.24%", Description = "Condemned before killing, of the live weight. [default: 0.24%, United States]" };

    private readonly Option<string?> condemnedCarcass = new("--condemned-carcass") { HelpName = "0.97%", Description = "Condemned after, of all carcass weight. [default: 0.97%, United States]" };

    private readonly Option<string?> trim = new("--trim") { HelpName = "1%", Description = "Trimmed off the carcasses passed. [default: none]" };

    private readonly Option<string?> cuttingLoss = new("--cutting-loss") { HelpName = "1%", Description = "Lost in cutting, of the carcass. [default: none]" };

    private readonly Option<string[]> parts = new("--part") { HelpName = "giblets=4%", Description = "A part beside the carcass that you weighed, of the live weight at killing; repeatable." };

    private readonly Option<string?> cutFee = new("--cut-fee") { HelpName = "1.50", Description = "What the plant charges to cut a bird. [default: none]" };

    private readonly Option<string?> packCost = new("--pack-cost") { HelpName = "0.20", Description = "What a pack costs. [default: none]" };

    private PlantOptions(Command command)
    {
        foreach (Option option in new Option[] { type, dressing, batches, basis, chill, drip, condemnedLive, condemnedCarcass, trim, cuttingLoss, parts, cutFee, packCost })
        {
            command.Add(option);
        }
    }

    public static PlantOptions AddTo(Command command) => new(command);

    public PlantCharges Charges(OptionWords words) => PlantCharges.Of(words.Money(cutFee) ?? Money.Zero, words.Money(packCost) ?? Money.Zero);

    public PlantConditions? Read(OptionWords words, BirdOptions birds)
    {
        BirdType kind = words.Choice(type, ("fast", BirdType.Fast), ("slow", BirdType.Slow), ("heritage", BirdType.Heritage));
        DressingRatio? ratio = Ratio(words, Dressings.For(kind), birds.State);
        ChillWater? water = Water(words, ratio);
        Probability Share(Option<string?> option, double most, double otherwise) => Probability.FromFraction(words.Percent(option, 0, most) ?? otherwise);
        Condemnation usual = Condemnation.UnitedStates;
        Condemnation condemned = Condemnation.Of(Share(condemnedLive, 50, usual.OfLive.Fraction), Share(condemnedCarcass, 50, usual.OfCarcass.Fraction));
        Probability trimmed = Share(trim, 50, 0), lost = Share(cuttingLoss, 50, 0);
        IReadOnlyList<NamedPart> others = Parts(words);
        foreach (Option<string?> option in new[] { condemnedLive, condemnedCarcass, trim }.Where(option => ratio is { IncludesCondemned: true } && words.Text(option) is not null))
        {
            words.Refuse(option.Name + ": is in the dressing ratio " + ratio!.Name + " already, which comes from the weight of all birds delivered; expected one of the two");
        }

        if (ratio is { MeasuredOn.IsStated: false } && birds.State.HoursOffFeed == 0 && !birds.KillingIsStated)
        {
            words.Refuse("--off-feed: is needed, since the dressing ratio " + ratio.Name + " is taken for live weight at killing; expected the hours from the last feed to killing");
        }

        return ratio is null ? null : new()
        {
            Dressing = ratio,
            AtKilling = birds.AtKilling,
            Withdrawal = birds.Withdrawal,
            Condemned = condemned,
            Trim = trimmed,
            CuttingLoss = lost,
            Water = water,
            OtherParts = others,
        };
    }

    private DressingRatio? Ratio(OptionWords words, DressingRatio planning, LiveState weighed)
    {
        int? own = words.Count(batches, "batches");
        CarcassBasis? stated = Basis(words);
        string? text = words.Text(dressing);
        bool isName = text is not null && !text.Contains('%', StringComparison.Ordinal);
        if (isName || text is null)
        {
            foreach (Option<string?> option in new[] { batches, basis }.Where(option => words.Text(option) is not null))
            {
                words.Refuse(option.Name + ": belongs to a ratio of your own; expected --dressing in percent too");
            }

            DressingRatio? published = text is null ? planning : Dressings.Named(text);
            if (published is null)
            {
                words.Refuse(dressing.Name + ": \"" + text + "\" is no published ratio; expected a share, as in 71%, or " + string.Join(", ", Dressings.All.Select(known => known.Name)));
            }

            return published;
        }

        return words.Percent(dressing, 40, 95) is { } share && stated is not null && words.Problems.Count == 0
            ? planning.PooledWith(PastDressing.Of(Probability.FromFraction(share), own ?? 1, stated, weighed))
            : null;
    }

    private CarcassBasis? Basis(OptionWords words)
    {
        (CarcassCondition condition, Inclusion neck, Inclusion giblets, Inclusion feet) = (CarcassCondition.Packed, default(Inclusion), default(Inclusion), default(Inclusion));
        foreach (string word in (words.Text(basis) ?? "packed").Split(',', StringSplitOptions.TrimEntries))
        {
            switch (word)
            {
                case "hot": condition = CarcassCondition.Hot; break;
                case "chilled": condition = CarcassCondition.Chilled; break;
                case "packed": condition = CarcassCondition.Packed; break;
                case "neck": neck = Inclusion.With; break;
                case "no-neck": neck = Inclusion.Without; break;
                case "giblets": giblets = Inclusion.With; break;
                case "no-giblets": giblets = Inclusion.Without; break;
                case "feet": feet = Inclusion.With; break;
                case "no-feet": feet = Inclusion.Without; break;
                default:
                    words.Refuse(basis.Name + ": \"" + word + "\" is unknown; expected hot, chilled or packed, neck or no-neck, giblets or no-giblets, feet or no-feet, with commas");
                    return null;
            }
        }

        return CarcassBasis.Of(condition, neck, giblets, feet);
    }

    private ChillWater? Water(OptionWords words, DressingRatio? ratio)
    {
        double? uptake = words.Percent(chill, 0, 20), dripped = words.Percent(drip, 0, 20);
        if (uptake is null)
        {
            if (words.Text(drip) is not null && words.Text(chill) is null)
            {
                words.Refuse(drip.Name + ": belongs to --chill; expected --chill too");
            }

            return null;
        }

        if (ratio is not null && ratio.Basis.Condition != CarcassCondition.Hot)
        {
            words.Refuse(chill.Name + ": belongs to a hot carcass, and the dressing ratio " + ratio.Name + " is " + ratio.Basis
                + "; expected no --chill (the water is in the ratio), or your own hot ratio with --basis hot");
            return null;
        }

        return ChillWater.Of(100 * uptake.Value, 100 * (dripped ?? 0));
    }

    private List<NamedPart> Parts(OptionWords words)
    {
        List<NamedPart> read = [];
        foreach (string word in words.Texts(parts))
        {
            string[] sides = word.Split('=', 2, StringSplitOptions.TrimEntries);
            string? problem = null;
            double share = 0;
            if (sides.Length == 2 && sides[0].Length > 0 && QuantityText.TryPercent(sides[1], out share, out problem) && share is > 0 and <= 0.6)
            {
                read.Add(NamedPart.Of(sides[0], Probability.FromFraction(share)));
            }
            else
            {
                words.Refuse(parts.Name + ": " + (problem ?? string.Create(CultureInfo.InvariantCulture, $"\"{word}\" is no part; expected a name, = and a share above 0 % and up to 60 %, as in giblets=4%")));
            }
        }

        return read;
    }
}
