using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Feeding;

/// <summary>What else a forecast may know.</summary>
public sealed class FeedForecastOptions
{
    /// <summary>Curves that the batch may be following, at the ages of <see cref="FeedForecast.AgesFor"/>: how sure the weights are. Null: the curve is taken as exactly right, with a caution.</summary>
    public CurveDraws? Curves { get; init; }

    /// <summary>How many of them are tried, 20 to 10000; 200 unless told.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside these.</exception>
    public int Draws
    {
        get;
        init => field = (int)Require.Between(value, 20, 10_000, "", nameof(Draws));
    }
    = 200;

    /// <summary>The farm's own record of this batch; null where there is none.</summary>
    public FeedRecord? Record { get; init; }

    /// <summary>The chance that intervals claim, between 0 and 1; 0.90 unless told.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not between 0 and 1.</exception>
    public double Level
    {
        get;
        init => field = Require.Share(value, nameof(Level));
    }
    = GrowthFit.DefaultLevel;
}
