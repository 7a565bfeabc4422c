using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Weighing;

/// <summary>How alike the birds of one age are: their mean, their spread, and the share within 10 % of the mean.</summary>
/// <remarks>
/// Several weigh-ins of one age are taken as one heap: the mean is that of all birds; the spread is that of the birds whose spread is
/// known, within and between their weigh-ins. The share is counted where every bird was weighed singly.
/// </remarks>
public sealed class Uniformity
{
    private const double Band = 0.10;

    private Uniformity(IReadOnlyList<WeighIn> sameAge)
    {
        (Age, Sex) = (sameAge[0].Age, sameAge[0].Sex);
        Birds = sameAge.Sum(weighIn => weighIn.BirdsWeighed);
        MeanKilograms = Mean(sameAge);
        List<double> singly = [.. sameAge.SelectMany(weighIn => weighIn.Kilograms.ToArray())];
        Histogram = Weighing.Histogram.Of(singly);
        List<WeighIn> spread = [.. sameAge.Where(weighIn => weighIn.BirdsWeighed == 1 || weighIn.StandardDeviationKilograms is not null)];
        BirdsBehindSpread = spread.Sum(weighIn => weighIn.BirdsWeighed);
        if (BirdsBehindSpread > 1)
        {
            double mean = Mean(spread);
            double squares = spread.Sum(weighIn => ((weighIn.BirdsWeighed - 1) * Square(weighIn.StandardDeviationKilograms ?? 0))
                + (weighIn.BirdsWeighed * Square(weighIn.MeanKilograms - mean)));
            StandardDeviationKilograms = Math.Sqrt(squares / (BirdsBehindSpread - 1));
            CoefficientOfVariation = StandardDeviationKilograms / mean;
            Basis = singly.Count == Birds ? UniformityBasis.Counted : UniformityBasis.NormalCurve;
            ShareWithinTenPercent = Basis == UniformityBasis.Counted ? Counted(singly) : NormalShare(CoefficientOfVariation.Value);
        }

        Cautions = Basis == UniformityBasis.NormalCurve && Sex == Sex.Mixed ? [CaughtBirds, MixedFlock] : [CaughtBirds];
    }

    /// <summary>Equation and source.</summary>
    public static ModelInfo Model { get; } = new(
        "uniformity",
        "Uniformity",
        "counted: birds with |w - m| <= 0.10 m over all birds; normal curve: 2 Phi(0.10/CV) - 1",
        [
            new ModelSymbol("w", "weight of a bird", "kg"),
            new ModelSymbol("m", "mean of the birds weighed", "kg"),
            new ModelSymbol("CV", "coefficient of variation between birds (n - 1)", "-"),
            new ModelSymbol("Phi", "the normal distribution function", "-"),
        ],
        [new Citation("IasriCourse", "IASRI e-course on poultry statistics, worked example of flock uniformity", HowKnown.ReadInSource, "95 of 115 birds within 945-1155 g, 82.6 %")],
        "Counting is exact for the birds weighed. The normal curve says 78.9, 68.3 and 59.5 % at a CV of 8, 10 and 12 %; a mixed flock is two curves, not one.",
        HowKnown.Derived);

    /// <summary>The caution that goes with every weigh-in.</summary>
    public static Caution CaughtBirds { get; } = new(
        "caught-birds",
        "The birds one catches are not a random sample: the slow and the heavy are caught first. Fence off a part of the flock and weigh every bird in it.");

    /// <summary>The caution of the normal curve in a flock of both sexes.</summary>
    public static Caution MixedFlock { get; } = new(
        "mixed-flock",
        "Cockerels and pullets together follow two curves, not one normal curve: the share within 10 % of the mean is rough. Weigh birds singly to count it.");

    /// <summary>How old the birds were.</summary>
    public Age Age { get; }

    /// <summary>Which birds were weighed.</summary>
    public Sex Sex { get; }

    /// <summary>How many birds were weighed.</summary>
    public int Birds { get; }

    /// <summary>How many of them show the spread: those weighed singly, and those of means with a standard deviation.</summary>
    public int BirdsBehindSpread { get; }

    /// <summary>The mean of all birds weighed.</summary>
    public Mass MeanWeight => Mass.FromKilograms(MeanKilograms);

    /// <summary>The standard deviation between birds (n - 1); null where fewer than two show it.</summary>
    public Mass? StandardDeviation => StandardDeviationKilograms is { } kilograms ? Mass.FromKilograms(kilograms) : null;

    /// <summary>The coefficient of variation between birds, as a fraction; null where the standard deviation is.</summary>
    public double? CoefficientOfVariation { get; }

    /// <summary>The share of birds within 10 % of the mean, both bounds included, as a fraction; null where the spread is unknown.</summary>
    public double? ShareWithinTenPercent { get; }

    /// <summary>Whether that share was counted or worked out.</summary>
    public UniformityBasis Basis { get; }

    /// <summary>Birds weighed singly, by weight; empty where there are none. Bars are of equal width on round edges in kg.</summary>
    public IReadOnlyList<HistogramBin> Histogram { get; }

    /// <summary>What to mind before acting on these numbers.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    internal double MeanKilograms { get; }

    internal double? StandardDeviationKilograms { get; }

    /// <summary>The uniformity of the birds of one weigh-in.</summary>
    public static Uniformity Of(WeighIn weighIn) => new([weighIn]);

    /// <summary>The uniformity at each age; cockerels, pullets and mixed birds of one age apart.</summary>
    public static IReadOnlyList<Uniformity> ByAge(WeighInSeries series) =>
        [.. series.GroupBy(weighIn => (weighIn.Age, weighIn.Sex)).OrderBy(group => group.Key).Select(group => new Uniformity([.. group]))];

    /// <summary>Where the flock's mean lies if the birds weighed were a random sample: m ± t(n-1) s sqrt(1/n - 1/N), as in <see cref="BirdsToWeigh"/>.</summary>
    /// <param name="level">The chance that the interval claims, between 0 and 1.</param>
    /// <param name="flock">How many birds there are, as many as were weighed or more; null for a flock so large that it does not matter.</param>
    /// <returns>Open on both sides where the spread is unknown, and below where it would reach 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1, or the flock is smaller than the sample.</exception>
    public Interval<Mass> MeanInterval(double level = 0.90, int? flock = null)
    {
        Require.Share(level);
        double share = flock is { } all ? 1.0 / Require.AtLeast(all, Birds, nameof(flock)) : 0;
        if (StandardDeviationKilograms is not { } deviation)
        {
            return Interval<Mass>.Of(null, null, level);
        }

        double half = Distributions.StudentQuantile((1 + level) / 2, BirdsBehindSpread - 1) * deviation * Math.Sqrt((1.0 / Birds) - share);
        return Interval<Mass>.Of(half < MeanKilograms ? Mass.FromKilograms(MeanKilograms - half) : null, Mass.FromKilograms(MeanKilograms + half), level);
    }

    /// <summary>One line, as in <c>42 d: 30 birds, mean 2.412 kg (5.32 lb), SD 231 g (8.15 oz), CV 9.6 %, 70 % within 10 % of the mean</c>, in every culture.</summary>
    public override string ToString() => Words.Weighed(Age, Birds, MeanKilograms, StandardDeviationKilograms)
        + (CoefficientOfVariation is { } variation && ShareWithinTenPercent is { } share
            ? string.Create(CultureInfo.InvariantCulture, $", CV {100 * variation:0.#} %, {100 * share:0} % within 10 % of the mean")
            : ", spread unknown");

    private static double Mean(IReadOnlyList<WeighIn> weighIns) =>
        weighIns.Sum(weighIn => weighIn.BirdsWeighed * weighIn.MeanKilograms) / weighIns.Sum(weighIn => (double)weighIn.BirdsWeighed);

    /// <summary>The slack keeps 945 g within a tenth of 1050 g, which doubles do not see.</summary>
    private double Counted(List<double> kilograms) =>
        (double)kilograms.Count(weight => Math.Abs(weight - MeanKilograms) <= Band * MeanKilograms * (1 + 1e-9)) / kilograms.Count;

    private static double NormalShare(double variation) => variation == 0 ? 1 : (2 * Distributions.NormalProbability(Band / variation)) - 1;

    private static double Square(double value) => value * value;
}
