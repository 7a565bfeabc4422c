using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Feeding;

/// <summary>The flock's mean weight at the ends and middles of every day; in the first week from hatch weight where one is given.</summary>
internal sealed class WeightPath
{
    private const double FirstWeekDays = 7;

    private readonly double startDays;
    private readonly double? hatchKilograms;
    private readonly int anchor;

    public WeightPath(IGrowthCurve curve, double startDays, int count, double? hatchKilograms)
    {
        (this.startDays, this.hatchKilograms) = (startDays, hatchKilograms);
        anchor = hatchKilograms is null ? 0 : Math.Clamp((int)Math.Ceiling(FirstWeekDays - startDays), 0, count);
        double[] ages = new double[count + 1 - anchor];
        double[] middles = new double[count - anchor];
        for (int i = anchor; i <= count; i++)
        {
            ages[i - anchor] = startDays + i;
            if (i < count)
            {
                middles[i - anchor] = startDays + i + 0.5;
            }
        }

        Kilograms = new double[count + 1];
        Middles = new double[count];
        curve.WeightsAt(ages, Kilograms.AsSpan(anchor));
        curve.WeightsAt(middles, Middles.AsSpan(anchor));
        Anchor(Kilograms);
        for (int i = 0; i < anchor; i++)
        {
            Middles[i] = Math.Sqrt(Kilograms[i] * Kilograms[i + 1]);
        }

        for (int i = 0; i <= count; i++)
        {
            if (!(Kilograms[i] >= FeedPath.LeastKilograms && Kilograms[i] <= FeedPath.MostKilograms))
            {
                throw new ArgumentOutOfRangeException(nameof(curve), string.Create(
                    CultureInfo.InvariantCulture,
                    $"A bird of {WeightText.Of(Kilograms[i])} at {startDays + i:0.##} d is not allowed; expected weights between {WeightText.Of(FeedPath.LeastKilograms)} and {WeightText.Of(FeedPath.MostKilograms)}, for which feed is known."));
            }
        }
    }

    /// <summary>At the ends of the days, the start first, kg.</summary>
    public double[] Kilograms { get; }

    /// <summary>In their middles, kg.</summary>
    public double[] Middles { get; }

    /// <summary>Puts weights of the first week on the even way from hatch weight to the curve.</summary>
    public void Anchor(Span<double> kilograms)
    {
        if (hatchKilograms is not { } hatch)
        {
            return;
        }

        double rate = Math.Log(kilograms[anchor] / hatch) / (startDays + anchor);
        for (int i = 0; i < anchor; i++)
        {
            kilograms[i] = hatch * Math.Exp(rate * (startDays + i));
        }
    }
}
