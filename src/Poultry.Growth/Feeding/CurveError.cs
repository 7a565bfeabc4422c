using Poultry.Growth.Fitting;

namespace Poultry.Growth.Feeding;

/// <summary>How sure feed is for want of knowing the weights: feed of every day by each of many curves that the batch may be following.</summary>
internal sealed class CurveError
{
    private readonly double[] feed;
    private readonly int draws, days;

    private CurveError(double[] feed, int draws, int days) => (this.feed, this.draws, this.days) = (feed, draws, days);

    /// <summary>Nothing is unsure: the curve is taken as right.</summary>
    public static CurveError None { get; } = new([], 0, 0);

    /// <summary>Draws that no bird could follow, left out.</summary>
    public int LeftOut { get; private init; }

    public static CurveError Of(FeedPath path, CurveDraws curves, int draws, WeightPath weights)
    {
        double[] feed = new double[draws * path.Count];
        Span<double> kilograms = new double[path.Count + 1];
        int kept = 0;
        for (int draw = 0; draw < draws; draw++)
        {
            curves.Draw(draw, kilograms);
            weights.Anchor(kilograms);
            kept += path.Feed(kilograms, feed.AsSpan(kept * path.Count, path.Count)) ? 1 : 0;
        }

        return new(feed, kept, path.Count) { LeftOut = draws - kept };
    }

    /// <summary>Standard deviation of the logarithm of feed summed up from one day to another, each day counted for so many birds.</summary>
    public double Of(int fromDay, int toDay, ReadOnlySpan<double> birds)
    {
        (double mean, double squares) = (0, 0);
        for (int draw = 0; draw < draws; draw++)
        {
            double sum = 0;
            for (int day = fromDay; day < toDay; day++)
            {
                sum += birds[day] * feed[(draw * days) + day];
            }

            Add(draw, Math.Log(sum), ref mean, ref squares);
        }

        return draws < 2 ? 0 : Math.Sqrt(squares / (draws - 1));
    }

    /// <summary>The same from a day to the end of every later one.</summary>
    public double[] Cumulative(int fromDay, ReadOnlySpan<double> birds)
    {
        double[] sums = new double[draws];
        double[] deviations = new double[birds.Length];
        for (int day = fromDay; draws >= 2 && day < birds.Length; day++)
        {
            (double mean, double squares) = (0, 0);
            for (int draw = 0; draw < draws; draw++)
            {
                sums[draw] += birds[day] * feed[(draw * days) + day];
                Add(draw, Math.Log(sums[draw]), ref mean, ref squares);
            }

            deviations[day] = Math.Sqrt(squares / (draws - 1));
        }

        return deviations;
    }

    /// <summary>Welford's sums: no cancellation.</summary>
    private static void Add(int before, double value, ref double mean, ref double squares)
    {
        double off = value - mean;
        mean += off / (before + 1);
        squares += off * (value - mean);
    }
}
