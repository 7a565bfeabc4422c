using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Birds of one weight on one floor, held against every limit on space.</summary>
/// <remarks>
/// Density is the live weight of all birds present over the littered floor that they can reach at all times. Several limits count together, birds/m² and kg/m² alike;
/// the one that lets in the fewest birds binds. Limits that do not apply, or of which that is unknown, are told and never bind.
/// </remarks>
public sealed class StockingVerdict
{
    private readonly double? earlierSum;

    private StockingVerdict(double birds, Mass weight, Area floor, IReadOnlyList<LimitVerdict> limits, double? earlierSum)
    {
        (Birds, Weight, Floor, Limits, this.earlierSum) = (birds, weight, floor, limits, earlierSum);
        Binding = limits.Where(verdict => verdict.Binds && MostBirds(verdict, weight.Kilograms) is not null).MinBy(verdict => MostBirds(verdict, weight.Kilograms));
        BirdsAtLimit = Binding is null ? null : MostBirds(Binding, weight.Kilograms);
    }

    /// <summary>Birds on the floor; an expected number need not be whole.</summary>
    public double Birds { get; }

    /// <summary>Their mean live weight.</summary>
    public Mass Weight { get; }

    /// <summary>The littered floor that they can reach at all times.</summary>
    public Area Floor { get; }

    /// <summary>Live weight on the floor.</summary>
    public StockingDensity Density => BirdDensity.At(Weight);

    /// <summary>Birds on the floor.</summary>
    public BirdDensity BirdDensity => BirdDensity.Of(Birds, Floor);

    /// <summary>Every limit on space, with whether it applies and is met.</summary>
    public IReadOnlyList<LimitVerdict> Limits { get; }

    /// <summary>The limit that lets in the fewest birds of this weight; null where none is known to bind.</summary>
    public LimitVerdict? Binding { get; }

    /// <summary>The most birds of this weight that the binding limit lets in, rounded down; null where none is known to bind.</summary>
    public int? BirdsAtLimit { get; }

    /// <summary>Whether all limits that bind are met; null where none is known to bind.</summary>
    public bool? IsMet => Binding is null ? null : Limits.All(verdict => !verdict.Binds || verdict.Met != false);

    /// <summary>Birds too many, rounded up; 0 where none are.</summary>
    public int BirdsTooMany => IsMet == false ? (int)Math.Ceiling(Birds - BirdsAtLimit!.Value) : 0;

    /// <summary>Holds birds on a floor against limits.</summary>
    /// <param name="floor">The littered floor that the birds can reach at all times, above 0.</param>
    /// <param name="birds">0 or more; an expected number need not be whole. With 0 the floor is empty: only how many fit is told.</param>
    /// <param name="weight">Mean live weight, above 0.</param>
    /// <param name="keeping">Where and how; its flock size and house floor decide about scopes, and are these birds and this floor where it states none.</param>
    /// <param name="limits">Any limits, those on other subjects are passed over; null for the shipped ones.</param>
    /// <param name="earlierBatches">The highest densities of the two batches before this one, for limits on the mean of three; null while unknown.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static StockingVerdict Of(
        Area floor, double birds, Mass weight, Keeping keeping, IReadOnlyList<Limit>? limits = null, (StockingDensity First, StockingDensity Second)? earlierBatches = null)
    {
        ArgumentNullException.ThrowIfNull(keeping);
        double squareMeters = Require.Positive(floor.SquareMeters, "m2", nameof(floor));
        double kilograms = Require.Positive(weight.Kilograms, "kg", nameof(weight));
        Require.Between(birds, 0, int.MaxValue - 1, "birds");
        BirdDensity density = BirdDensity.Of(birds, floor);
        double? earlierSum = earlierBatches is var (first, second) ? first.KilogramsPerSquareMeter + second.KilogramsPerSquareMeter : null;
        Keeping measured = keeping.With(Measured.BirdWeight(weight));
        measured = keeping.Of(LimitSubject.HouseFloor) is null ? measured.With(Measured.HouseFloor(floor)) : measured;
        if (density.AreaPerBird is { } area)
        {
            measured = measured.With(Measured.Density(density.At(weight)), Measured.BirdsPerArea(density), Measured.FloorAreaPerBird(area));
            measured = keeping.Of(LimitSubject.FlockSize) is null ? measured.With(Measured.Flock((int)Math.Ceiling(birds))) : measured;
            measured = earlierSum is { } earlier
                ? measured.With(Measured.MeanDensity(StockingDensity.FromKilogramsPerSquareMeter((earlier + (birds * kilograms / squareMeters)) / 3)))
                : measured;
        }

        IEnumerable<Limit> onSpace = (limits ?? LimitBook.Shipped).Where(limit => FloorFit.Subjects.Contains(limit.Subject));
        return new(birds, weight, floor, LimitVerdict.Of(onSpace, measured), earlierSum);
    }

    /// <summary>The weight above which the kg/m² of a text bind, and below which its birds/m² do: W = D/n.</summary>
    /// <param name="mostWeight">D, above 0.</param>
    /// <param name="mostBirds">n, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is 0.</exception>
    public static Mass CrossingWeight(StockingDensity mostWeight, BirdDensity mostBirds) => Mass.FromKilograms(
        Require.Positive(mostWeight.KilogramsPerSquareMeter, "kg/m2", nameof(mostWeight)) / Require.Positive(mostBirds.BirdsPerSquareMeter, "birds/m2", nameof(mostBirds)));

    /// <summary>The most birds of another weight, for which the same limits bind; null where none is known to.</summary>
    internal int? MostBirds(double kilograms) => Limits.Where(verdict => verdict.Binds).Min(verdict => MostBirds(verdict, kilograms));

    private int? MostBirds(LimitVerdict verdict, double kilograms) => FloorFit.MostBirds(verdict.Limit, Floor.SquareMeters, kilograms, earlierSum);

    /// <summary>One line, with the binding limit or why there is none, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Birds:0.#} birds of {WeightText.Of(Weight.Kilograms)}: {Density}")
        + (Binding is null
            ? ". No limit is known to bind. " + LimitVerdict.NotLegalAdvice
            : string.Create(CultureInfo.InvariantCulture, $"; at most {BirdsAtLimit} birds. {Binding}"));
}
