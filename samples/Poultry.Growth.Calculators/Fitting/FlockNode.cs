
namespace Poultry.Growth.Calculators.Fitting;

/// <summary>The birds at one age; chance and share are fractions, and null without a target.</summary>
internal sealed record FlockNode(double AgeDays, double UniformityPercent, double? ChanceAtTarget, double? ShareAtTarget)
{
    public static FlockNode Of(FlockAtAge flock) =>
        new(flock.Age.Days, flock.Uniformity.Percent, flock.ChanceAtTarget?.Fraction, flock.ShareAtTarget?.Fraction);
}
