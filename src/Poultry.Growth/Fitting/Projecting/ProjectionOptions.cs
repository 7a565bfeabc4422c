using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What a projection assumes about birds and weigh-ins where the weigh-ins themselves do not tell.</summary>
public sealed class ProjectionOptions
{
    /// <summary>Error of a whole weigh-in where nothing is known of it (assumption).</summary>
    internal const double UsualWeighInError = 0.02;

    internal const double LargestWeighInError = 0.5;

    /// <summary>The usual assumptions.</summary>
    public static ProjectionOptions Default { get; } = new();

    /// <summary>Spread between birds of one sex as a fraction of their mean, between 0 and 1; null takes it from the birds weighed singly or with SD.</summary>
    /// <value>Null. Where nothing weighed tells it, it is the prior's; where that does not tell either, 0.10 is assumed, with a caution.</value>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double? CoefficientOfVariation
    {
        get;
        init => field = value is { } share ? Require.Share(share, nameof(CoefficientOfVariation)) : null;
    }

    /// <summary>Error of a whole weigh-in (scale, place, time of day) as a fraction of the mean, 0 to 0.5; null takes the prior's.</summary>
    /// <value>Null. Where the prior does not tell, 0.02 is assumed.</value>
    /// <exception cref="ArgumentOutOfRangeException">Not within 0 and 0.5.</exception>
    public double? WeighInError
    {
        get;
        init => field = value is { } error ? Require.Between(error, 0, LargestWeighInError, "", nameof(WeighInError)) : null;
    }

    /// <summary>The share of cockerels in a mixed flock, between 0 and 1. A flock of one sex has a prior of that sex.</summary>
    /// <value>0.5, as hatched.</value>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double MaleShare
    {
        get;
        init => field = Require.Share(value, nameof(MaleShare));
    }
    = 0.5;

    /// <summary>The distance of the shapes that are tried: halving it moves no limit by more than 1 %.</summary>
    internal double ShapeStep { get; init; } = 0.1;
}
