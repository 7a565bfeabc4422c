using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Limits of a share, fractions from 0 to 1.</summary>
internal sealed record LimitsNode(double Low, double High)
{
    public static LimitsNode Of(Interval<BirdPrevalence> interval) => new(interval.Low!.Value.Share.Fraction, interval.High!.Value.Share.Fraction);
}
