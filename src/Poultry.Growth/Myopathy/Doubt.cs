namespace Poultry.Growth.Myopathy;

/// <summary>What lies between a low and a high end: spread evenly, half of it below the likely value and half above, so that the likely value is the median.</summary>
internal readonly struct Doubt(double low, double likely, double high)
{
    public double Low => low;

    public double Likely => likely;

    public double High => high;

    /// <summary>The same on the scale of logarithms.</summary>
    public static Doubt Logarithmic(double low, double likely, double high) => new(Math.Log(low), Math.Log(likely), Math.Log(high));

    /// <summary>The value below which it lies with a probability.</summary>
    public double Quantile(double probability) => probability < 0.5
        ? low + ((likely - low) * 2 * probability)
        : likely + ((high - likely) * ((2 * probability) - 1));

    /// <summary>Equally likely values that stand for it.</summary>
    public double[] Nodes(int count)
    {
        double[] nodes = new double[count];
        for (int i = 0; i < count; i++)
        {
            nodes[i] = Quantile((i + 0.5) / count);
        }

        return nodes;
    }
}
