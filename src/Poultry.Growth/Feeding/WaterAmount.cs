using System.Globalization;
using Poultry.Growth.Evidence;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Water a bird drinks a day, by one source, with the range that the source itself gives. One gram is one millilitre.</summary>
/// <remarks>The range is that of seasons or of sources, not an interval with a chance: nobody measured its chance.</remarks>
public sealed class WaterAmount
{
    private readonly double gramsPerDay, lowGramsPerDay, highGramsPerDay;

    internal WaterAmount(ModelInfo model, double gramsPerDay, double lowGramsPerDay, double highGramsPerDay, IReadOnlyList<Caution> cautions)
    {
        (Model, Cautions) = (model, cautions);
        (this.gramsPerDay, this.lowGramsPerDay, this.highGramsPerDay) = (gramsPerDay, lowGramsPerDay, highGramsPerDay);
    }

    /// <summary>By which source.</summary>
    public ModelInfo Model { get; }

    /// <summary>A bird a day.</summary>
    public MassFlow PerBird => MassFlow.FromGramsPerDay(gramsPerDay);

    /// <summary>The least that the source speaks of.</summary>
    public MassFlow Low => MassFlow.FromGramsPerDay(lowGramsPerDay);

    /// <summary>The most.</summary>
    public MassFlow High => MassFlow.FromGramsPerDay(highGramsPerDay);

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>As in <c>222 g/d (214 to 239)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{gramsPerDay:0} g/d ({lowGramsPerDay:0} to {highGramsPerDay:0})");
}
