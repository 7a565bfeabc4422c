using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What a fit or a projection says about one age.</summary>
internal sealed class ProjectedWeight
{
    private ProjectedWeight(Age age, Estimate<Mass> mean, Estimate<Mass>? bird, IReadOnlyList<Caution> known) =>
        (Age, Mean, Bird, Beyond) = (age, mean, bird, BeyondOf(mean.Cautions, known));

    public Age Age { get; }

    public Estimate<Mass> Mean { get; }

    /// <summary>One bird picked at random; null where nothing weighed tells how far birds lie apart.</summary>
    public Estimate<Mass>? Bird { get; }

    /// <summary>The caution that goes with this age and not with the whole answer; null where there is none.</summary>
    public Caution? Beyond { get; }

    /// <summary>What an estimate's cautions say beyond those of the whole answer.</summary>
    public static Caution? BeyondOf(IEnumerable<Caution> cautions, IEnumerable<Caution> known) => cautions.Except(known).FirstOrDefault();

    /// <summary>By a fit; null where its law has no weight so early.</summary>
    public static ProjectedWeight? Of(GrowthFit fit, Age age, double level)
    {
        try
        {
            return new(age, fit.MeanAt(age, level), fit.BirdAt(age, level), fit.Cautions);
        }
        catch (ArgumentOutOfRangeException exception) when (exception.ParamName == "age")
        {
            return null;
        }
    }

    /// <summary>By a projection.</summary>
    public static ProjectedWeight Of(Projection projection, Age age, double level) =>
        new(age, projection.MeanAt(age, level), projection.BirdAt(age, level), projection.Cautions);
}
