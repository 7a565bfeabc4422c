namespace Poultry.Growth.Myopathy;

/// <summary>Figures in order.</summary>
internal static class Sorted
{
    /// <summary>The value below which a share of the figures lies, straight between neighbours.</summary>
    public static double Quantile(double[] figures, double probability)
    {
        double place = Math.Clamp((probability * figures.Length) - 0.5, 0, figures.Length - 1);
        int i = Math.Min((int)place, figures.Length - 2);
        return figures[i] + ((place - i) * (figures[i + 1] - figures[i]));
    }
}
