using System.CommandLine;
using Poultry.Growth.Files;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>How a batch may be split over two days.</summary>
internal sealed class SplitOptions
{
    private const string Any = "any";

    private readonly Option<string?> shares = new("--split")
    {
        HelpName = "40%", Description = "Also try the batch on two of the days: this share of the birds on the earlier, the rest on the later. Several with commas, or any for 25%,50%,75%.",
    };

    private readonly Option<string?> birds = new("--split-birds")
    {
        HelpName = "largest|caught", Description = "Which birds go first: the largest, or those caught first. [default: largest]",
    };

    public static SplitOptions AddTo(Command command)
    {
        SplitOptions options = new();
        command.Add(options.shares);
        command.Add(options.birds);
        return options;
    }

    public FirstBirds Birds(OptionWords words)
    {
        if (words.Stands(birds) && !words.Stands(shares))
        {
            words.Refuse("--split-birds: says nothing without --split; expected --split with a share, as in 40%");
        }

        return words.Choice(birds, ("largest", FirstBirds.Largest), ("caught", FirstBirds.AsCaught));
    }

    public IReadOnlyList<Probability> Shares(OptionWords words)
    {
        if (words.Text(shares) is not { } text)
        {
            return [];
        }

        List<Probability> read = [];
        foreach (string word in text == Any ? ["25%", "50%", "75%"] : text.Split(',', StringSplitOptions.TrimEntries))
        {
            string? fault = QuantityText.TryPercent(word, out double share, out string? problem)
                ? share is >= 0.05 and <= 0.95 ? null : "\"" + word + "\" is out of range; expected 5% to 95%"
                : problem;
            if (fault is null)
            {
                read.Add(Probability.FromFraction(share));
            }
            else
            {
                words.Refuse(shares.Name + ": " + fault);
            }
        }

        return read;
    }
}
