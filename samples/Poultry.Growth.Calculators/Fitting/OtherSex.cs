using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Weigh-ins of cockerels beside a prior of pullets, or the other way round.</summary>
internal static class OtherSex
{
    /// <summary>Whether the file holds birds of the other sex than the batch; a problem where it does.</summary>
    public static bool IsWeighed(WeighInSeries? series, Sex sex, Action<string> refuse)
    {
        bool weighed = sex != Sex.Mixed && series?.Any(weighIn => weighIn.Sex != sex && weighIn.Sex != Sex.Mixed) == true;
        if (weighed)
        {
            refuse("--sex: the file holds weigh-ins of the other sex; expected mixed, or a file without them");
        }

        return weighed;
    }
}
