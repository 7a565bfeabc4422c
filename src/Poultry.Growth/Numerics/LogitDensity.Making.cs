namespace Poultry.Growth.Numerics;

/// <content>Densities made of others.</content>
internal sealed partial class LogitDensity
{
    /// <summary>Enough points that limits are off by less than 1 in 10,000.</summary>
    private const int Points = 5201;

    /// <summary>So many deviations out a normal is kept: a count that contradicts it asks for what lies far out, and a second one may contradict the first.</summary>
    private const double Reach = 26;

    /// <summary>exp(-600) of the highest density counts for nothing: below what a next count may still ask for.</summary>
    private const double Depth = 600;

    /// <summary>A mixture of normals about one middle.</summary>
    public static LogitDensity Normals(double middle, ReadOnlySpan<(double Deviation, double Weight)> parts)
    {
        double widest = 0;
        foreach ((double deviation, _) in parts)
        {
            widest = Math.Max(widest, deviation);
        }

        double from = middle - (Reach * widest), step = 2 * Reach * widest / (Points - 1);
        double[] logs = new double[Points];
        for (int i = 0; i < Points; i++)
        {
            double sum = 0;
            foreach ((double deviation, double weight) in parts)
            {
                double standard = (from + (step * i) - middle) / deviation;
                sum += weight / deviation * Math.Exp((-standard * standard / 2) + (Reach * Reach / 2));
            }

            logs[i] = Math.Log(sum);
        }

        return new(from, step, logs);
    }

    /// <summary>The same moved along z: all odds times exp(by).</summary>
    public LogitDensity Shifted(double by) => new(first + by, step, logHeights);

    /// <summary>The sum of z and an independent number that takes equally likely values.</summary>
    public LogitDensity Blurred(ReadOnlySpan<double> values)
    {
        (double least, double most) = (values[0], values[0]);
        foreach (double value in values)
        {
            (least, most) = (Math.Min(least, value), Math.Max(most, value));
        }

        int length = heights.Length + (int)Math.Ceiling((most - least) / step);
        double[] logs = new double[length];
        for (int i = 0; i < length; i++)
        {
            double z = first + least + (step * i), sum = 0;
            foreach (double value in values)
            {
                sum += Math.Exp(LogAt(z - value));
            }

            logs[i] = Math.Log(sum);
        }

        return new(first + least, step, logs);
    }

    /// <summary>The density times a likelihood, on a grid of its own where the product lives.</summary>
    /// <param name="logLikelihood">Of z.</param>
    public LogitDensity Times(Func<double, double> logLikelihood)
    {
        double highest = double.NegativeInfinity;
        double[] product = new double[heights.Length];
        for (int i = 0; i < product.Length; i++)
        {
            product[i] = logHeights[i] + logLikelihood(first + (step * i));
            highest = Math.Max(highest, product[i]);
        }

        int from = Array.FindIndex(product, log => log > highest - Depth);
        int to = Array.FindLastIndex(product, log => log > highest - Depth);
        double low = Math.Max(first, first + (step * (from - 1))), high = Math.Min(Last, first + (step * (to + 1)));
        double fine = (high - low) / (Points - 1);
        double[] logs = new double[Points];
        for (int i = 0; i < Points; i++)
        {
            double z = low + (fine * i);
            logs[i] = LogAt(z) + logLikelihood(z);
        }

        return new(low, fine, logs);
    }
}
