using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>The birds of one line of an order and what they give.</summary>
public sealed class LineYield
{
    internal LineYield(CutOrderLine line, double birds, double liveKilograms, double carcassKilograms, double lossKilograms, IReadOnlyList<PieceYield> pieces)
    {
        (Line, ExpectedBirds, Pieces) = (line, birds, pieces);
        (LiveKilograms, CarcassKilograms, LossKilograms) = (liveKilograms, carcassKilograms, lossKilograms);
    }

    /// <summary>What is done with them.</summary>
    public CutOrderLine Line { get; }

    /// <summary>How many birds are delivered for it, expected.</summary>
    public double ExpectedBirds { get; }

    /// <summary>Their live weight together, as weighed.</summary>
    public Mass LiveWeight => Mass.FromKilograms(LiveKilograms);

    /// <summary>Their carcasses that passed, before cutting.</summary>
    public Mass Carcass => Mass.FromKilograms(CarcassKilograms);

    /// <summary>What is lost in cutting them.</summary>
    public Mass CuttingLoss => Mass.FromKilograms(LossKilograms);

    /// <summary>The pieces, by kind.</summary>
    public IReadOnlyList<PieceYield> Pieces { get; }

    internal double LiveKilograms { get; }

    internal double CarcassKilograms { get; }

    internal double LossKilograms { get; }

    /// <summary>In one line, as in <c>rudn-42d: 120 birds, 262 kg (578 lb) carcass</c>, in every culture.</summary>
    public override string ToString() => Line.Name + string.Create(CultureInfo.InvariantCulture, $": {ExpectedBirds:0.#} birds, ") + WeightText.Of(CarcassKilograms) + " carcass";
}
