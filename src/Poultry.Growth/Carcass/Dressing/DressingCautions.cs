using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>What to mind when a dressing ratio is used for a batch.</summary>
internal static class DressingCautions
{
    /// <summary>Days and share of the weight within which a single trial still counts as the same birds.</summary>
    private const double NearDays = 7, NearShare = 0.2;

    public static IReadOnlyList<Caution> For(DressingRatio ratio, Sex sex, Age? age, Mass live)
    {
        List<Caution> cautions = [];
        if (ratio.Basis.IsIncomplete)
        {
            cautions.Add(new("dressing-basis-not-stated", "The dressing ratio " + ratio.Name + " does not say everything about its carcass (" + ratio.Basis
                + "). A neck, giblets or feet more or less move it by points: your own packed weight over live weight is better."));
        }

        if (!ratio.MeasuredOn.IsStated)
        {
            cautions.Add(new("dressing-live-state-not-stated", "The dressing ratio " + ratio.Name
                + " does not say whether its birds were weighed full-fed; it is taken for their weight at killing. On full-fed birds it would give more by what is lost off feed."));
        }

        if (ratio.Sex != Sex.Mixed && sex != ratio.Sex)
        {
            cautions.Add(new("dressing-other-sex", "The dressing ratio " + ratio.Name + " was measured on birds of another sex; in one trial the sexes differed by 0.2 points."));
        }

        if ((ratio.Age is { } measured && age is { } asked && Math.Abs((asked - measured).Days) > NearDays)
            || (ratio.MeanLiveWeight is { } weighed && Math.Abs(live.Kilograms - weighed.Kilograms) > NearShare * weighed.Kilograms))
        {
            string where = string.Join(" and ", new[] { ratio.Age?.ToString(), ratio.MeanLiveWeight is { } weight ? WeightText.Of(weight.Kilograms) : null }.OfType<string>());
            cautions.Add(new("dressing-outside-range", string.Create(CultureInfo.InvariantCulture,
                $"The dressing ratio {ratio.Name} was measured at {where}. Older and heavier birds dress higher: by 1.4 points at 56 d against 42 d in one trial.")));
        }

        return cautions;
    }
}
