using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>Which birds are cut into what, and what the packs bring.</summary>
internal sealed class CutOptions
{
    private readonly Option<string?> set = new("--set")
    {
        HelpName = "NAME|FILE", Description = "Shares of the pieces: rudn-42d, rudn-33d (breast, thigh, drumstick, wing, frame), boneless-breast, slow-local-90d, slow-local-100d, or your own file (.csv). [default: rudn-42d]",
    };

    private readonly Option<string?> pieces = new("--pieces") { HelpName = "8", Description = "4, 6, 8 or 10 pieces of a bird beside the frame, of a set with breast, thigh, drumstick, wing and frame. [default: as in the set]" };

    private readonly Option<string?> order = new("--order")
    {
        HelpName = "40%|FILE", Description = "The heaviest 40 % are cut and the rest stays whole; or whole, cut, or a file (.csv), see docs/file-formats.md. [default: whole without, cut with --set]",
    };

    private readonly Option<string?> prices = new("--prices") { HelpName = "FILE", Description = "Packs, prices and what is expected to sell (.csv), see docs/file-formats.md." };

    private CutOptions(Command command)
    {
        command.Add(set);
        command.Add(pieces);
        command.Add(order);
        command.Add(prices);
    }

    public static CutOptions AddTo(Command command) => new(command);

    public CutSet? Set(OptionWords words)
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

        return words.Text(pieces) is { } count && known is not null ? InPieces(words, known, count) : known;
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

        try
        {
            return CutSets.InPieces(known, number);
        }
        catch (ArgumentException exception)
        {
            words.Refuse(pieces.Name + ": " + exception.Message.Split(" (Parameter")[0]);
            return null;
        }
    }
}
