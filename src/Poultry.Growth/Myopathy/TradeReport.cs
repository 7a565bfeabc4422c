using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>A report that goes round in the trade, held against the evidence: up to about a quarter of the birds in a bad flock.</summary>
public sealed class TradeReport
{
    private TradeReport(string says, HowKnown howKnown, BirdPrevalence share, int flocks) => (Says, HowKnown, Share, Flocks) = (says, howKnown, share, flocks);

    /// <summary>The report.</summary>
    public static TradeReport QuarterOfABadFlock { get; } = new("up to about a quarter of the birds in a bad flock", HowKnown.CommonPractice, BirdPrevalence.FromPercent(25), 50);

    /// <summary>What is said.</summary>
    public string Says { get; }

    /// <summary>Common practice, no source.</summary>
    public HowKnown HowKnown { get; }

    /// <summary>The share of birds that is meant.</summary>
    public BirdPrevalence Share { get; }

    /// <summary>Of how many flocks the worst is looked at.</summary>
    public int Flocks { get; }

    /// <summary>The chance of that share or more in one flock, by the published planning model for birds from 45 d.</summary>
    public Probability ChanceInOneFlock => Plain.ChanceAbove(Share);

    /// <summary>The chance in the worst of that many flocks.</summary>
    public Probability ChanceInWorstFlock => Plain.ChanceWorstAbove(Share, Flocks);

    /// <summary>Whether the evidence supports the report.</summary>
    public string Verdict => string.Create(
        CultureInfo.InvariantCulture,
        $"Not supported, and not ruled out. The worst of 151 flocks surveyed had 16.7 % of birds, isolated reports go from 3 to 17 %, none of them a quarter. The model gives a flock with 25 % or more a chance of {ChanceInOneFlock.Percent:0.0} % (1 in {1 / ChanceInOneFlock.Fraction:0}), and the worst of {Flocks} flocks {ChanceInWorstFlock.Percent:0.0} %; that far out it is extrapolation.");

    /// <summary>What is said, and that it has no source.</summary>
    public override string ToString() => Says + " (common practice, no source)";

    private static BatchPrevalence Plain => PlanningRisk.Published.For(new BatchAtRisk { KillAge = AgeSusceptibility.Full, IsOutdoor = false });
}
