using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>A batch that grows on one floor: how dense it is at each age, which limit binds, when it is passed, and how likely.</summary>
public sealed class DensityPath
{
    /// <summary>How closely the age at which a limit is passed is sought, d: about a minute.</summary>
    private const double AgeToleranceDays = 1e-3;

    private readonly IGrowthCurve curve;
    private readonly HeadCountPath heads;
    private readonly Keeping keeping;
    private readonly IReadOnlyList<Limit> limits;
    private readonly (StockingDensity, StockingDensity)? earlierBatches;

    private DensityPath(
        Area floor, IGrowthCurve curve, HeadCountPath heads, Keeping keeping, IReadOnlyList<Limit> limits, (StockingDensity, StockingDensity)? earlierBatches)
    {
        Floor = floor;
        (this.curve, this.heads, this.keeping, this.limits, this.earlierBatches) = (curve, heads, keeping, limits, earlierBatches);
    }

    /// <summary>Catching twice: what thinning costs.</summary>
    public static Caution RepeatCatching { get; } = new(
        "repeat-catching",
        "Thinning catches a house twice: it frightens and hurts birds that stay, lets disease in, and makes deep muscle lesions likelier. Placing fewer chicks is the better remedy.");

    /// <summary>The littered floor that the birds can reach at all times.</summary>
    public Area Floor { get; }

    /// <summary>A batch on a floor.</summary>
    /// <param name="floor">The littered floor that the birds can reach at all times, above 0.</param>
    /// <param name="curve">How heavy they are at each age.</param>
    /// <param name="heads">How many there are at each age. The number placed decides about scopes that name a flock size, unless the keeping states another.</param>
    /// <param name="keeping">Where and how.</param>
    /// <param name="limits">Any limits, those on other subjects are passed over; null for the shipped ones.</param>
    /// <param name="earlierBatches">The highest densities of the two batches before this one, for limits on the mean of three; null while unknown.</param>
    /// <exception cref="ArgumentOutOfRangeException">The floor is not above 0.</exception>
    public static DensityPath Of(
        Area floor,
        IGrowthCurve curve,
        HeadCountPath heads,
        Keeping keeping,
        IReadOnlyList<Limit>? limits = null,
        (StockingDensity First, StockingDensity Second)? earlierBatches = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(heads);
        ArgumentNullException.ThrowIfNull(keeping);
        Require.Positive(floor.SquareMeters, "m2", nameof(floor));
        Keeping stated = keeping.Of(LimitSubject.FlockSize) is null ? keeping.With(Measured.Flock(heads.Placed)) : keeping;
        return new(floor, curve, heads, stated, [.. (limits ?? LimitBook.Shipped).Where(limit => FloorFit.Subjects.Contains(limit.Subject))], earlierBatches);
    }

    /// <summary>The batch at an age.</summary>
    /// <param name="age">From placement on, and within the ages of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">The age lies before placement, or the curve says nothing about it.</exception>
    public DensityAtAge At(Age age) => new(age, Verdict(age, curve.WeightAt(age)));

    /// <summary>When a limit is first passed between two ages; null where none is.</summary>
    /// <param name="from">The earlier age, not before placement.</param>
    /// <param name="to">The later age, by 1000 d at most.</param>
    /// <exception cref="ArgumentOutOfRangeException">An age lies before placement or is not covered by the curve, or the later is the earlier or much later.</exception>
    public LimitReached? FirstOver(Age from, Age to)
    {
        Require.Between(to.Days, from.Days, from.Days + 1000, "d", nameof(to));
        double kept = from.Days;
        for (double days = from.Days; ; days = Math.Min(days + 1, to.Days))
        {
            if (IsOver(days))
            {
                return Reached(kept, days, isFromTheStart: days == from.Days);
            }

            if (days >= to.Days)
            {
                return null;
            }

            kept = days;
        }
    }

    /// <summary>The chance that the limits that bind are passed, at each age of the draws: over growth curves, and over how many birds are alive.</summary>
    /// <param name="draws">Curves that the batch may follow, at ages not before placement.</param>
    /// <param name="count">How many of them to use, 1 or more.</param>
    /// <returns>One for each age of the draws; null where no limit is known to bind.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1, or an age lies before placement.</exception>
    public IReadOnlyList<Probability?> ChanceOver(CurveDraws draws, int count)
    {
        ArgumentNullException.ThrowIfNull(draws);
        Require.AtLeast(count, 1);
        IReadOnlyList<Age> ages = draws.Ages;
        double[] kilograms = new double[ages.Count];
        double[] sums = new double[ages.Count];
        DrawnCrowding[] crowding = [.. ages.Select(age => new DrawnCrowding(heads, age, weight => Verdict(age, weight), WeightClasses()))];
        for (int draw = 0; draw < count; draw++)
        {
            draws.Draw(draw, kilograms);
            for (int i = 0; i < sums.Length; i++)
            {
                sums[i] += crowding[i].ChanceOver(kilograms[i]);
            }
        }

        return [.. sums.Select(sum => double.IsNaN(sum) ? (Probability?)null : Probability.FromFraction(Math.Min(1, sum / count)))];
    }

    /// <summary>As in <c>500 birds placed on 40 m2 (431 ft2)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{heads.Placed} birds placed on {Floor.SquareMeters:0.#} m2 ({Floor.SquareFeet:0} ft2)");

    private StockingVerdict Verdict(Age age, Mass weight) =>
        StockingVerdict.Of(Floor, heads.BirdsAt(age), weight, keeping.With(Measured.BirdAge(age)), limits, earlierBatches);

    /// <summary>The weights at which limits begin or end, in kg and in order.</summary>
    private double[] WeightClasses() =>
        [.. limits.SelectMany(limit => limit.When).Where(clause => clause.Subject == LimitSubject.BirdWeight).Select(clause => clause.Value).Distinct().Order()];

    private bool IsOver(double days) => At(Age.FromDays(days)).Verdict.IsMet == false;

    private LimitReached Reached(double kept, double over, bool isFromTheStart)
    {
        while (over - kept > AgeToleranceDays)
        {
            double middle = (kept + over) / 2;
            (kept, over) = IsOver(middle) ? (kept, middle) : (middle, over);
        }

        return new(Age.FromDays(kept), At(Age.FromDays(over)).Verdict.Limits.First(verdict => verdict is { Binds: true, Met: false }), isFromTheStart);
    }
}
