using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What draws say about one outcome. Works in room of its own, which it uses again and again; one thread at a time.</summary>
internal sealed class Sample(int draws, double level)
{
    private readonly double[] room = new double[draws];

    /// <summary>Mean and the range that holds so many of the draws.</summary>
    public Estimate<T> Estimate<T>(double[] values, Func<double, T> make)
        where T : struct, IComparable<T> => Estimate(Mean(values), draw => values[draw], make);

    /// <summary>The same of something worked out from the draws; the value is given, as where it is a ratio of two means.</summary>
    public Estimate<T> Estimate<T>(double value, Func<int, double> outcome, Func<double, T> make)
        where T : struct, IComparable<T>
    {
        Fill(outcome);
        Array.Sort(room);
        return new(make(value), Interval<T>.Of(make(Quantile((1 - level) / 2)), make(Quantile((1 + level) / 2)), level), HarvestComparison.Model, []);
    }

    /// <summary>The mean of the worst part of the draws.</summary>
    public double MeanOfWorst(double[] values, double part)
    {
        values.CopyTo(room, 0);
        Array.Sort(room);
        int count = Math.Max(1, (int)Math.Round(part * room.Length));
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += room[i];
        }

        return sum / count;
    }

    public static double Mean(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }

    /// <summary>The share of the draws for which something holds.</summary>
    public static Probability Share(int draws, Func<int, bool> holds)
    {
        int count = 0;
        for (int draw = 0; draw < draws; draw++)
        {
            count += holds(draw) ? 1 : 0;
        }

        return Probability.FromFraction((double)count / draws);
    }

    /// <summary>The squared correlation of something worked out from the draws with an outcome of them; 0 where one does not vary.</summary>
    public double SharedVariance(Func<int, double> something, double[] outcome)
    {
        Fill(something);
        (double meanA, double meanB, double aa, double bb, double ab) = (Mean(room), Mean(outcome), 0, 0, 0);
        for (int i = 0; i < room.Length; i++)
        {
            double a = room[i] - meanA, b = outcome[i] - meanB;
            (aa, bb, ab) = (aa + (a * a), bb + (b * b), ab + (a * b));
        }

        // What does not vary leaves nothing but rounding.
        return aa > 1e-18 * meanA * meanA * room.Length && bb > 0 ? ab * ab / (aa * bb) : 0;
    }

    private void Fill(Func<int, double> outcome)
    {
        for (int draw = 0; draw < room.Length; draw++)
        {
            room[draw] = outcome(draw);
        }
    }

    /// <summary>Between sorted draws on a straight line.</summary>
    private double Quantile(double probability)
    {
        double at = probability * (room.Length - 1);
        int below = Math.Min((int)at, room.Length - 2);
        return room[below] + ((at - below) * (room[below + 1] - room[below]));
    }
}
