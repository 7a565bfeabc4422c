using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>Live weight lost off feed and on the road, with the range of the sources: no interval with a chance.</summary>
public sealed class LiveShrink
{
    private readonly double kilograms;

    internal LiveShrink(double kilograms, LikelyRange<Probability> lost, IReadOnlyList<Caution> cautions) =>
        (this.kilograms, Share, LowShare, HighShare, Cautions) = (kilograms, lost.Likely, lost.Low, lost.High, cautions);

    /// <summary>Live weight at killing.</summary>
    public Mass LiveWeight => Left(Share);

    /// <summary>The least that sources leave.</summary>
    public Mass LowLiveWeight => Left(HighShare);

    /// <summary>The most.</summary>
    public Mass HighLiveWeight => Left(LowShare);

    /// <summary>The part of the live weight that is lost.</summary>
    public Probability Share { get; }

    /// <summary>The least loss of the sources.</summary>
    public Probability LowShare { get; }

    /// <summary>The greatest.</summary>
    public Probability HighShare { get; }

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>As in <c>2.41 kg (5.31 lb), 3.6 % less (2.4 to 4.8)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{WeightText.Of(LiveWeight.Kilograms)}, {Share} less ({LowShare.Percent:0.#} to {HighShare.Percent:0.#})");

    private Mass Left(Probability share) => Mass.FromKilograms(kilograms * (1 - share.Fraction));
}
