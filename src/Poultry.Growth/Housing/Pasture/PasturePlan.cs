using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>A batch in shelters that are moved over pasture: how much fresh ground it uses, and what it leaves there.</summary>
/// <remarks>Every move goes to ground that has rested; shelters stand beside each other. Paths, water lines and corners need more land than is counted here.</remarks>
public sealed class PasturePlan
{
    private PasturePlan(Area shelter, int shelters, int birds, MoveSchedule moves, Age from, Age to) =>
        (Shelter, Shelters, Birds, Moves, From, To) = (shelter, shelters, birds, moves, from, to);

    /// <summary>What a shelter must do, and that space is advice.</summary>
    public static Caution ShelterDuties { get; } = new(
        "shelter-duties",
        "A shelter must give shade, keep off rain, wind and draughts, and keep predators out; chicks move out at 2 to 4 weeks in most advice, later in the cold. Space in shelters is advice, not law.");

    /// <summary>Ground under one shelter.</summary>
    public Area Shelter { get; }

    /// <summary>Shelters side by side.</summary>
    public int Shelters { get; }

    /// <summary>Birds in all of them.</summary>
    public int Birds { get; }

    /// <summary>How often they are moved.</summary>
    public MoveSchedule Moves { get; }

    /// <summary>Age when the birds move out.</summary>
    public Age From { get; }

    /// <summary>Age when they leave.</summary>
    public Age To { get; }

    /// <summary>Days on pasture.</summary>
    public Duration Time => To.Since(From);

    /// <summary>Birds on the ground under the shelters.</summary>
    public BirdDensity Density => BirdDensity.Of(Birds, Ground);

    /// <summary>Fresh ground that the batch uses.</summary>
    public Area GroundPerBatch => Area.FromSquareMeters(Ground.SquareMeters * Moves.Positions(From, To));

    /// <summary>Fresh ground that each bird uses in its time on pasture.</summary>
    public Area GroundPerBird => Area.FromSquareMeters(GroundPerBatch.SquareMeters / Birds);

    private Area Ground => Area.FromSquareMeters(Shelter.SquareMeters * Shelters);

    /// <summary>Plans a batch.</summary>
    /// <param name="shelter">Ground under one shelter, above 0.</param>
    /// <param name="shelters">1 or more.</param>
    /// <param name="birds">In all of them together, 1 or more: who plans safely counts no deaths.</param>
    /// <param name="moves">How often they are moved.</param>
    /// <param name="from">Age when the birds move out.</param>
    /// <param name="to">Age when they leave, later than <paramref name="from"/>, by 1000 d at most.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static PasturePlan Of(Area shelter, int shelters, int birds, MoveSchedule moves, Age from, Age to)
    {
        ArgumentNullException.ThrowIfNull(moves);
        Require.Positive(shelter.SquareMeters, "m2", nameof(shelter));
        Require.AtLeast(shelters, 1);
        Require.AtLeast(birds, 1);
        Require.Above(to.Days, from.Days, "d", nameof(to));
        Require.Between(to.Days - from.Days, 0, 1000, "d on pasture", nameof(to));
        return new(shelter, shelters, birds, moves, from, to);
    }

    /// <summary>Fresh ground of each bird in a day at an age.</summary>
    /// <param name="age">Any.</param>
    public Area GroundPerBirdAndDay(Age age) => Area.FromSquareMeters(Ground.SquareMeters * Moves.MovesPerDay(age) / Birds);

    /// <summary>The fewest moves a day that give each bird so much fresh ground a day, rounded up to whole moves from one a day on, and to one move in whole days below.</summary>
    /// <param name="groundPerBirdAndDay">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public double MovesPerDay(Area groundPerBirdAndDay)
    {
        double moves = Require.Positive(groundPerBirdAndDay.SquareMeters, "m2", nameof(groundPerBirdAndDay)) * Birds / Ground.SquareMeters;
        return moves >= 1 ? Math.Ceiling(moves - 1e-9) : 1 / Math.Floor((1 / moves) + 1e-9);
    }

    /// <summary>What a batch leaves on the ground it passes, once.</summary>
    /// <param name="perBird">Nitrogen, or phosphorus, that one bird excretes on pasture, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public AreaDensity LoadOfPass(Mass perBird) =>
        AreaDensity.FromKilogramsPerSquareMeter(Require.NotNegative(perBird.Kilograms, "kg", nameof(perBird)) / GroundPerBird.SquareMeters);

    /// <summary>One line, as in <c>80 birds in 1 shelter, 28 d: 312 m2 (3360 ft2) of fresh ground, 3.9 m2 (42 ft2) a bird</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{CountText.Of(Birds, "bird")} in {CountText.Of(Shelters, "shelter")}, {Time.Days:0.#} d: {GroundPerBatch.SquareMeters:0} m2 ({GroundPerBatch.SquareFeet:0} ft2) of fresh ground, {GroundPerBird.SquareMeters:0.##} m2 ({GroundPerBird.SquareFeet:0.#} ft2) a bird");
}
