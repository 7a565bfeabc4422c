using System.Globalization;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>Birds of one batch that were opened at both tenders, and how many of them had a lesion. Birds are counted, not tenders.</summary>
public sealed class LesionInspection
{
    private LesionInspection(string batch, DateOnly? killed, int opened, int found, Probability detection) =>
        (Batch, Killed, Opened, Found, Detection) = (batch, killed, opened, found, detection);

    /// <summary>Which batch.</summary>
    public string Batch { get; }

    /// <summary>When it was killed; null where that is not known.</summary>
    public DateOnly? Killed { get; }

    /// <summary>Birds opened.</summary>
    public int Opened { get; }

    /// <summary>Birds with a lesion on one side or both.</summary>
    public int Found { get; }

    /// <summary>The chance that an affected bird is seen to be affected.</summary>
    public Probability Detection { get; }

    /// <summary>An inspection.</summary>
    /// <param name="opened">Birds opened at both tenders, 1 or more.</param>
    /// <param name="found">Birds with a lesion, 0 to all of them.</param>
    /// <param name="batch">Which batch.</param>
    /// <param name="killed">When it was killed.</param>
    /// <param name="detection">The chance that an affected bird is seen to be affected, above 0; surely, where not stated. No source gives one: a first guess is the trimmer's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    /// <exception cref="ArgumentException">The name of the batch is empty.</exception>
    public static LesionInspection Of(int opened, int found, string batch = "batch", DateOnly? killed = null, Probability? detection = null)
    {
        Require.AtLeast(opened, 1);
        Require.Between(found, 0, opened, "birds");
        Probability seen = detection ?? Probability.FromFraction(1);
        Require.Positive(seen.Fraction, "", nameof(detection));
        return new(Require.Text(batch), killed, opened, found, seen);
    }

    /// <summary>As in <c>batch: 2 of 300 birds</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Batch}: {Found} of {Opened} birds");

    /// <summary>x ln q + (n - x) ln(1 - q), q = seen logistic(z), as a function of z.</summary>
    /// <param name="seen">The part of affected birds that are old enough and seen, above 0.</param>
    internal Func<double, double> LogLikelihood(double seen) => z =>
    {
        double q = seen * LogitDensity.Logistic(z);
        double clean = Opened - Found;
        return (Found == 0 ? 0 : Found * Math.Log(q)) + (clean == 0 ? 0 : clean * Math.Log(1 - q));
    };
}
