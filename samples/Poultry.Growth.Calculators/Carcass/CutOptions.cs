using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>Which birds are cut into what, and what the packs bring.</summary>
internal sealed class CutOptions
{
    private const string BonelessBreast = "boneless breast";

    private readonly Option<string?> set = new("--set")
    {
        HelpName = "NAME|FILE", Description = "Shares of the pieces: rudn-42d, rudn-33d (breast, thigh, drumstick, wing, frame), boneless-breast, slow-local-90d, slow-local-100d, or your own file (.csv). [default: rudn-42d]",
    };

    private readonly Option<string?> pieces = new("--pieces") { HelpName = "8", Description = "4, 6, 8 or 10 pieces of a bird beside the frame, of a set with breast, thigh, drumstick, wing and frame. [default: as in the set]" };

    private readonly Option<string?> tenders = new("--tenders")
    {
        HelpName = "5.5%|cited", Description = "Both tenders as you weighed them, of the carcass, packed apart from the boneless breast of the set; cited is about 4 % of live weight, derived. [default: not apart]",
    };

    private readonly Option<string?> exponents = new("--exponents")
    {
        HelpName = "two-point|breast=1.06,...", Description = "Shares that change with the carcass, part = a carcass^b: b of every piece, your own, or those of rudn-42d's two ages (1.5 to 2.1 kg, thin). [default: shares stay]",
    };

    private readonly Option<string?> reference = new("--shares-at") { HelpName = "2.1kg", Description = "The carcass weight at which the shares of the set hold; with --exponents of your own." };

    private readonly Option<string?> order = new("--order")
    {
        HelpName = "40%|FILE", Description = "The heaviest 40 % are cut and the rest stays whole; or whole, cut, or a file (.csv), see docs/file-formats.md. [default: whole without, cut with --set]",
    };

    private readonly Option<string?> prices = new("--prices") { HelpName = "FILE", Description = "Packs, prices and what is expected to sell (.csv), see docs/file-formats.md." };

    private CutOptions(Command command)
    {
        command.Add(set);
        command.Add(pieces);
        command.Add(tenders);
        command.Add(exponents);
        command.Add(reference);
        command.Add(order);
        command.Add(prices);
    }

    public static CutOptions AddTo(Command command) => new(command);

    /// <param name="words">The command line.</param>
    /// <param name="dressing">Turns tenders of live weight into tenders of the carcass; null where it was refused.</param>
    public CutSet? Set(OptionWords words, DressingRatio? dressing)
    {
        string name = words.Text(set) ?? CutSets.Rudn42Days.Name;
        CutSet? known = CutSets.Named(name);
        if (known is null && name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            known = Value(words, CutSetFile.Read(name));
        }
        else if (known is null)
        {
            words.Refuse(set.Name + ": \"" + name + "\" is no published set; expected " + string.Join(", ", CutSets.All.Select(one => one.Name))
                + ", or a file (.csv) of your own. No set with the back left on the pieces is published: weigh the pieces of a few birds");
        }

        known = known is not null && words.Text(pieces) is { } count ? InPieces(words, known, count) : known;
        known = known is not null && words.Text(tenders) is { } pair ? WithTenders(words, known, pair, dressing) : known;
        IReadOnlyDictionary<string, double>? powers = words.Text(exponents) is { } text ? Exponents(words, text) : null;
        Mass at = words.Weight(reference) ?? CutSets.Rudn42DaysCarcass;
        return known is not null && powers is not null ? Tried(words, exponents, () => known.Growing(powers, at)) : known;
    }

    public CutOrder? Order(OptionWords words, CutSet? cut)
    {
        string text = words.Text(order) ?? (words.Text(set) is null && words.Text(pieces) is null ? CutOrderLine.WholeBird : "cut");
        if (text == CutOrderLine.WholeBird)
        {
            return CutOrder.AllWhole;
        }

        if (text.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return Value(words, CutOrderFile.Read(text, cut is null ? CutSets.All : [cut, .. CutSets.All.Where(known => known.Name != cut.Name)]));
        }

        double share = 1;
        string? problem = null;
        if (text != "cut" && (!QuantityText.TryPercent(text, out share, out problem) || share > 1))
        {
            words.Refuse(order.Name + ": \"" + text + "\" is no order; expected whole, cut, a share of the birds to be cut, as in 40%, or a file (.csv)");
            return null;
        }

        return CutOrder.HeaviestFirst(
            CutOrderLine.Of(cut, Probability.FromFraction(share)), CutOrderLine.Of(null, Probability.FromFraction(1 - share)));
    }

    /// <summary>The packs; none where no file is named.</summary>
    public IReadOnlyList<PackOffer> Offers(OptionWords words) => words.Text(prices) is { } file ? Value(words, PackOfferFile.Read(file)) ?? [] : [];

    private static T? Value<T>(OptionWords words, FileReading<T> reading)
        where T : class
    {
        foreach (string problem in FileProblem.Lines(reading.Problems))
        {
            words.Refuse(problem);
        }

        return reading.Value;
    }

    private CutSet? InPieces(OptionWords words, CutSet known, string count)
    {
        if (!int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            words.Refuse(pieces.Name + ": \"" + count + "\" is not a number of pieces; expected 4, 6, 8 or 10");
            return null;
        }

        return Tried(words, pieces, () => CutSets.InPieces(known, number));
    }

    private CutSet? WithTenders(OptionWords words, CutSet known, string pair, DressingRatio? dressing)
    {
        if (known.Pieces.FirstOrDefault(piece => piece.Name == BonelessBreast) is not { } breast)
        {
            words.Refuse(tenders.Name + ": the set " + known.Name + " has no boneless breast, and tenders can't be told from a breast on the bone; expected --set boneless-breast, or a file with such a piece");
            return null;
        }

        double? share = pair == "cited" ? CutSets.TenderPairOfLive.Likely.Fraction / dressing?.Ratio.Likely.Fraction : words.Percent(tenders, 0, 90 * breast.Share.Fraction);
        return share is { } fraction ? Tried(words, tenders, () => known.WithTenders(breast.Name, Probability.FromFraction(fraction))) : null;
    }

    private IReadOnlyDictionary<string, double>? Exponents(OptionWords words, string text)
    {
        if (text == "two-point")
        {
            return CutSets.TwoPointExponents;
        }

        Dictionary<string, double> read = new(StringComparer.OrdinalIgnoreCase);
        foreach (string word in text.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] sides = word.Split('=', 2, StringSplitOptions.TrimEntries);
            if (sides.Length != 2 || !double.TryParse(sides[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double power) || !read.TryAdd(sides[0], power))
            {
                words.Refuse(exponents.Name + ": \"" + word + "\" is no exponent; expected two-point, or every piece once with its exponent, as in breast=1.06,thigh=1.02");
                return null;
            }
        }

        if (words.Text(reference) is null)
        {
            words.Refuse(reference.Name + ": is needed with exponents of your own; expected the carcass weight at which the shares of the set hold");
        }

        return read;
    }

    /// <summary>What the library refuses is told with the option that asked for it.</summary>
    private static CutSet? Tried(OptionWords words, Option<string?> option, Func<CutSet> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException exception)
        {
            words.Refuse(option.Name + ": " + LibraryRefusal.Said(exception));
            return null;
        }
    }
}
