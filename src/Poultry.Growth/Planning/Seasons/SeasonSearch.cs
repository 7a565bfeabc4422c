namespace Poultry.Growth.Planning;

/// <summary>The best season by trying every choice that could still beat the best found: exact, for a handful of batches.</summary>
internal sealed class SeasonSearch
{
    private readonly SeasonBatch[] batches;
    private readonly SeasonOption[][] options;
    private readonly double[] atMost;
    private readonly SeasonUse use;
    private readonly SeasonOption?[] chosen;
    private SeasonOption?[]? best;
    private double bestMargin = double.NegativeInfinity;

    private SeasonSearch(IReadOnlyList<SeasonBatch> batches, SeasonLimits limits)
    {
        this.batches = [.. batches];
        options = [.. batches.Select(batch => batch.Options.OrderByDescending(option => option.Margin.Amount).ToArray())];
        use = new(limits, batches);
        chosen = new SeasonOption?[batches.Count];
        atMost = new double[batches.Count + 1];
        for (int i = batches.Count - 1; i >= 0; i--)
        {
            double own = options[i][0].Margin.Amount;
            atMost[i] = atMost[i + 1] + (batches[i].MustBeRaised ? own : Math.Max(0, own));
        }
    }

    /// <summary>The option of each batch, null where it is left out; null where the promised batches do not fit together.</summary>
    public static SeasonOption?[]? Best(IReadOnlyList<SeasonBatch> batches, SeasonLimits limits)
    {
        SeasonSearch search = new(batches, limits);
        search.Choose(0, 0);
        return search.best;
    }

    private void Choose(int at, double margin)
    {
        // Of seasons that bring as much, the first found stays: the order of the batches decides, whatever the machine.
        if (margin + atMost[at] <= bestMargin)
        {
            return;
        }

        if (at == batches.Length)
        {
            bestMargin = margin;
            best = [.. chosen];
            return;
        }

        foreach (SeasonOption option in options[at])
        {
            if (use.Fits(option))
            {
                use.Add(option, 1);
                chosen[at] = option;
                Choose(at + 1, margin + option.Margin.Amount);
                use.Add(option, -1);
            }
        }

        chosen[at] = null;
        if (!batches[at].MustBeRaised)
        {
            Choose(at + 1, margin);
        }
    }
}
