using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Feeders, drinkers or air that a limit asks for these birds: always the safe whole number.</summary>
public sealed class EquipmentNeed
{
    private EquipmentNeed(LimitVerdict verdict, string item) => (Verdict, Item) = (verdict, item);

    /// <summary>What is needed, as in <c>round drinkers, rim</c>.</summary>
    public string Item { get; }

    /// <summary>The limit, with whether it applies.</summary>
    public LimitVerdict Verdict { get; }

    /// <summary>Length of all rims or edges together; null where pieces or air are counted.</summary>
    public Length? Edge { get; private init; }

    /// <summary>Pieces, rounded up; null where length or air is counted.</summary>
    public int? Pieces { get; private init; }

    /// <summary>What fans and openings must be able to move; null where length or pieces are counted.</summary>
    public VolumeFlow? AirCapacity { get; private init; }

    /// <summary>What every limit on equipment asks for some birds, whether it applies or not.</summary>
    /// <param name="birds">1 or more.</param>
    /// <param name="weight">Mean live weight, above 0.</param>
    /// <param name="keeping">Where and how; its flock size is these birds where it states none.</param>
    /// <param name="limits">Any limits, those on other subjects are passed over; null for the shipped ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static IReadOnlyList<EquipmentNeed> For(int birds, Mass weight, Keeping keeping, IReadOnlyList<Limit>? limits = null)
    {
        Require.AtLeast(birds, 1);
        Require.Positive(weight.Kilograms, "kg", nameof(weight));
        ArgumentNullException.ThrowIfNull(keeping);
        Keeping known = keeping.Of(LimitSubject.FlockSize) is null ? keeping.With(Measured.Flock(birds)) : keeping;
        return
        [
            .. LimitVerdict.Of(limits ?? LimitBook.Shipped, known.With(Measured.BirdWeight(weight)))
                .Select(verdict => Of(verdict, birds, birds * weight.Kilograms)).OfType<EquipmentNeed>(),
        ];
    }

    /// <summary>One line, as in <c>round drinkers, rim: 660 cm (260 in)</c>, in every culture.</summary>
    public override string ToString() => Item + ": " + (Edge is { } edge
        ? string.Create(CultureInfo.InvariantCulture, $"{edge.Centimeters:0.#} cm ({edge.Inches:0.#} in)")
        : Pieces is { } pieces ? string.Create(CultureInfo.InvariantCulture, $"{pieces}")
        : string.Create(CultureInfo.InvariantCulture, $"{AirCapacity!.Value.CubicMetersPerHour:0} m3/h"));

    private static EquipmentNeed? Of(LimitVerdict verdict, int birds, double kilograms)
    {
        double figure = verdict.Limit.Value ?? 0;
        return verdict.Limit.Subject switch
        {
            LimitSubject.RoundDrinkerPerWeight => new(verdict, "round drinkers, rim") { Edge = Length.FromCentimeters(figure * kilograms) },
            LimitSubject.TroughDrinkerPerWeight => new(verdict, "drinking troughs, edge") { Edge = Length.FromCentimeters(figure * kilograms) },
            LimitSubject.RoundFeederPerWeight => new(verdict, "round feeders, rim") { Edge = Length.FromCentimeters(figure * kilograms) },
            LimitSubject.TroughFeederPerWeight => new(verdict, "feed troughs, edge") { Edge = Length.FromCentimeters(figure * kilograms) },
            LimitSubject.RoundDrinkerPerBird => new(verdict, "round drinkers, rim") { Edge = Length.FromCentimeters(figure * birds) },
            LimitSubject.TroughDrinkerPerBird => new(verdict, "drinking troughs, edge") { Edge = Length.FromCentimeters(figure * birds) },
            LimitSubject.RoundFeederPerBird => new(verdict, "round feeders, rim") { Edge = Length.FromCentimeters(figure * birds) },
            LimitSubject.TroughFeederPerBird => new(verdict, "feed troughs, edge") { Edge = Length.FromCentimeters(figure * birds) },
            LimitSubject.BirdsPerNipple => new(verdict, "drinking nipples") { Pieces = (int)Math.Ceiling(birds / figure) },
            LimitSubject.BirdsPerCup => new(verdict, "open cups") { Pieces = (int)Math.Ceiling(birds / figure) },
            LimitSubject.AirCapacity => new(verdict, "air that can be moved") { AirCapacity = VolumeFlow.FromCubicMetersPerHour(figure * kilograms) },
            _ => null,
        };
    }
}
