using Poultry.Growth.Curves;

namespace Poultry.Growth.Fitting;

/// <summary>What a fit must not change: a parameter held at a value, the limit without a mature weight, a known hatch weight.</summary>
internal readonly struct HeldValue
{
    private HeldValue(int parameter, double value, int coordinate, double hatchKilograms) =>
        (IsHeld, Parameter, Value, Coordinate, HatchKilograms) = (coordinate >= 0, parameter, value, coordinate, hatchKilograms);

    /// <summary>Whether a parameter, or the limit, is held.</summary>
    public bool IsHeld { get; }

    /// <summary>Which parameter, or <see cref="CurveShape.NoMatureWeight"/>.</summary>
    public int Parameter { get; }

    /// <summary>The value held.</summary>
    public double Value { get; }

    /// <summary>The coordinate that gives way: 0 the scale, 1 + j the shape coordinate j; -1 where nothing is held.</summary>
    public int Coordinate { get; }

    /// <summary>The known weight at hatch, kg; 0 where it is free.</summary>
    public double HatchKilograms { get; }

    /// <summary>Nothing held, but perhaps the hatch weight.</summary>
    public static HeldValue Only(double hatchKilograms) => new(0, 0, -1, hatchKilograms);

    /// <summary>The same with a parameter held as well.</summary>
    public HeldValue And(CurveShape shape, int parameter, double value = 0) =>
        new(parameter, value, shape.CoordinateFor(parameter), HatchKilograms);
}
