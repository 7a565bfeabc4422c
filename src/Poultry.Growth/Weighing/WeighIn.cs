using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Weighing;

/// <summary>Some birds of a batch, weighed at one age: singly, as a mean, or together on one scale.</summary>
/// <remarks>
/// Weights are live weights from 1 mg to 1000 t: wide enough to hold a weight in the wrong unit, which is flagged
/// (<see cref="WeighInSeries.Suspicions"/>) and not refused. A standard deviation is that of a sample, with n - 1 below the sum of squares.
/// </remarks>
public sealed class WeighIn
{
    private const double LowestKilograms = 1e-6;
    private const double HighestKilograms = 1e6;
    private const int MostBirds = 1_000_000;

    private readonly double[] kilograms;

    private WeighIn(
        WeighInKind kind, Age age, int birds, double meanKilograms, double? standardDeviationKilograms, double[] kilograms, Sex sex, string? note)
    {
        (Kind, Age, BirdsWeighed, Sex, Note) = (kind, age, birds, sex, note);
        (MeanKilograms, StandardDeviationKilograms, this.kilograms) = (meanKilograms, standardDeviationKilograms, kilograms);
    }

    /// <summary>How the birds were put on the scale.</summary>
    public WeighInKind Kind { get; }

    /// <summary>How old the birds were.</summary>
    public Age Age { get; }

    /// <summary>How many birds were weighed.</summary>
    public int BirdsWeighed { get; }

    /// <summary>Which birds were weighed.</summary>
    /// <value>Mixed unless <see cref="Of"/> says otherwise.</value>
    public Sex Sex { get; }

    /// <summary>What whoever weighed wrote beside it; null where nothing was written.</summary>
    public string? Note { get; }

    /// <summary>The mean live weight of the birds weighed.</summary>
    public Mass MeanWeight => Mass.FromKilograms(MeanKilograms);

    /// <summary>The standard deviation between the birds weighed (n - 1); null for a single bird, a group on one scale, or a mean without it.</summary>
    public Mass? StandardDeviation => StandardDeviationKilograms is { } spread ? Mass.FromKilograms(spread) : null;

    /// <summary>Standard deviation over mean, as a fraction (0.10 is 10 %); null where the standard deviation is.</summary>
    public double? CoefficientOfVariation => StandardDeviationKilograms / MeanKilograms;

    /// <summary>The weights of single birds in the order given; empty for the other kinds.</summary>
    public IReadOnlyList<Mass> Weights => Array.ConvertAll(kilograms, weight => Mass.FromKilograms(weight));

    internal double AgeDays => Age.Days;

    internal double MeanKilograms { get; }

    internal double? StandardDeviationKilograms { get; }

    internal ReadOnlySpan<double> Kilograms => kilograms;

    /// <summary>Birds weighed one at a time.</summary>
    /// <param name="age">How old they were.</param>
    /// <param name="weights">One weight a bird; at least one, each above 0.</param>
    /// <exception cref="ArgumentException">There is no weight.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is 0, negative or beyond sense.</exception>
    public static WeighIn Birds(Age age, params ReadOnlySpan<Mass> weights)
    {
        double[] kilograms = new double[weights.Length];
        for (int bird = 0; bird < kilograms.Length; bird++)
        {
            kilograms[bird] = Weight(weights[bird], string.Create(CultureInfo.InvariantCulture, $"{nameof(weights)}[{bird}]"));
        }

        return Singly(age, kilograms, Sex.Mixed, note: null);
    }

    /// <inheritdoc cref="Birds(Age, ReadOnlySpan{Mass})"/>
    public static WeighIn Birds(Age age, IEnumerable<Mass> weights) => Birds(age, weights.ToArray().AsSpan());

    /// <summary>A mean worked out beforehand.</summary>
    /// <param name="age">How old the birds were.</param>
    /// <param name="mean">Their mean live weight, above 0.</param>
    /// <param name="birds">How many were weighed, 1 to a million: the weight that this mean has against others.</param>
    /// <param name="standardDeviation">The standard deviation between the birds (n - 1), above 0; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A weight or the number is out of its range.</exception>
    /// <exception cref="ArgumentException">A standard deviation of a single bird.</exception>
    public static WeighIn Mean(Age age, Mass mean, int birds, Mass? standardDeviation = null)
    {
        double kilograms = Weight(mean, nameof(mean));
        Require.Between(birds, 1, MostBirds, "birds");
        if (standardDeviation is not { } spread)
        {
            return new WeighIn(WeighInKind.Mean, age, birds, kilograms, null, [], Sex.Mixed, note: null);
        }

        return birds > 1
            ? new WeighIn(WeighInKind.Mean, age, birds, kilograms, Weight(spread, nameof(standardDeviation)), [], Sex.Mixed, note: null)
            : throw new ArgumentException("One bird has no standard deviation; expected at least 2 birds.", nameof(standardDeviation));
    }

    /// <summary>Several birds on one scale.</summary>
    /// <param name="age">How old they were.</param>
    /// <param name="total">Their live weight together, crate or bucket taken off, above 0.</param>
    /// <param name="birds">How many there were, 1 to a million.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight or the number is out of its range.</exception>
    public static WeighIn Group(Age age, Mass total, int birds)
    {
        double mean = Weight(total, nameof(total)) / Require.Between(birds, 1, MostBirds, "birds");
        Require.Between(mean, LowestKilograms, HighestKilograms, "kg a bird", nameof(total));
        return new WeighIn(WeighInKind.Group, age, birds, mean, null, [], Sex.Mixed, note: null);
    }

    /// <summary>The same weigh-in, of birds of this sex.</summary>
    public WeighIn Of(Sex sex) => new(Kind, Age, BirdsWeighed, MeanKilograms, StandardDeviationKilograms, kilograms, sex, Note);

    /// <summary>The same weigh-in with a note beside it.</summary>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public WeighIn Noted(string note) =>
        new(Kind, Age, BirdsWeighed, MeanKilograms, StandardDeviationKilograms, kilograms, Sex, Require.Text(note));

    /// <summary>The weigh-in in plain numbers, to be saved.</summary>
    public WeighInRecord ToRecord() => new()
    {
        Kind = Kind,
        AgeDays = AgeDays,
        Birds = BirdsWeighed,
        MeanKilograms = MeanKilograms,
        StandardDeviationKilograms = StandardDeviationKilograms,
        Kilograms = [.. kilograms],
        Sex = Sex,
        Note = Note,
    };

    /// <summary>The weigh-in that was saved.</summary>
    /// <param name="record">From <see cref="ToRecord"/>.</param>
    /// <exception cref="ArgumentException">There are not as many single weights as birds.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static WeighIn FromRecord(WeighInRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        Require.SameLength(record.Kind == WeighInKind.Birds ? record.Birds : 0, record.Kilograms.Count, nameof(record.Kilograms));
        return new(
            Require.Named(record.Kind),
            Age.FromDays(record.AgeDays),
            Require.AtLeast(record.Birds, 1),
            Weight(record.MeanKilograms, nameof(record.MeanKilograms)),
            record.StandardDeviationKilograms is { } deviation ? Require.Between(deviation, 0, HighestKilograms, "kg", nameof(record.StandardDeviationKilograms)) : null,
            [.. record.Kilograms.Select(kilograms => Weight(kilograms, nameof(record.Kilograms)))],
            Require.Named(record.Sex),
            record.Note);
    }

    /// <summary>One line, as in <c>14 d: 20 birds, mean 428 g (15.1 oz), SD 37 g (1.31 oz)</c>, in every culture.</summary>
    public override string ToString() => Words.Weighed(Age, BirdsWeighed, MeanKilograms, StandardDeviationKilograms);

    /// <summary>The same weigh-in without some of its single birds; null when none is left.</summary>
    internal WeighIn? WithoutBirds(IReadOnlySet<int> birds)
    {
        double[] rest = [.. kilograms.Where((_, bird) => !birds.Contains(bird))];
        return rest.Length == 0 ? null : Singly(Age, rest, Sex, Note);
    }

    private static WeighIn Singly(Age age, double[] kilograms, Sex sex, string? note)
    {
        (double mean, double? deviation) = Spread.Of(Require.Some<double>(kilograms, "weights"));
        return new WeighIn(WeighInKind.Birds, age, kilograms.Length, mean, deviation, kilograms, sex, note);
    }

    private static double Weight(Mass weight, string name) => Weight(weight.Kilograms, name);

    private static double Weight(double kilograms, string name) =>
        Require.Between(Require.Positive(kilograms, "kg", name), LowestKilograms, HighestKilograms, "kg", name);
}
