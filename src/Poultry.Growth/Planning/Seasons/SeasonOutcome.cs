using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What becomes of a batch in the best season, beside what would become of it alone.</summary>
public sealed class SeasonOutcome
{
    internal SeasonOutcome(
        SeasonCandidate candidate, IReadOnlyList<SeasonDay> days, SeasonDay? chosen, SeasonDay alone, IReadOnlyList<string> gaveWayTo, IReadOnlyList<string> freedFor, Sample sample)
    {
        (Candidate, Days, Chosen, Alone, GaveWayTo, FreedFor) = (candidate, days, chosen, alone, gaveWayTo, freedFor);
        GivenUpRange = GivenUp == Money.Zero ? null : sample.Estimate(GivenUp.Amount, fate => alone.Margins[fate] - (chosen?.Margins[fate] ?? 0), Money.Of).Interval;
    }

    /// <summary>The batch.</summary>
    public SeasonCandidate Candidate { get; }

    /// <summary>Every way to raise it that was considered.</summary>
    public IReadOnlyList<SeasonDay> Days { get; }

    /// <summary>The way taken; null where the season is better without it.</summary>
    public SeasonDay? Chosen { get; }

    /// <summary>The way that brings most by itself, whatever else the season holds.</summary>
    public SeasonDay Alone { get; }

    /// <summary>What it gives up for the season: 0 where it is raised as if alone, or would lose money alone.</summary>
    public Money GivenUp => Money.Of(Math.Max(0, Alone.Harvest.Margin.Value.Amount - (Chosen?.Harvest.Margin.Value.Amount ?? 0)));

    /// <summary>The same in most of the fates drawn: below 0 in some, for the days are chosen by means; null where nothing is given up.</summary>
    public Interval<Money>? GivenUpRange { get; }

    /// <summary>The batches that could not all be raised as they are, were this one raised as if alone: they use what it gives up.</summary>
    public IReadOnlyList<string> GaveWayTo { get; }

    /// <summary>Of these, the batches that move later into the shelters that it frees; empty where none waits for them.</summary>
    public IReadOnlyList<string> FreedFor { get; }

    /// <summary>
    /// Days by which shelters are free earlier than alone, for a batch that uses them; 0 where none does. Only then does the margin by shelter-day decide, and not the
    /// margin of the batch.
    /// </summary>
    public int FreedDays => FreedFor.Count > 0 ? Alone.Option.Killed.DayNumber - Chosen!.Option.Killed.DayNumber : 0;

    /// <summary>In a sentence, in every culture.</summary>
    public override string ToString()
    {
        string users = string.Join(" and ", GaveWayTo);
        string alone = string.Create(CultureInfo.InvariantCulture, $"alone it would come {Alone.Option.Placed:yyyy-MM-dd} and be killed {Alone.Option.Killed:yyyy-MM-dd}, for {GivenUp.Amount:0.00} more") + (GivenUpRange is { } range ? ", " + range : "");
        return Chosen is null && GaveWayTo.Count > 0 ? Candidate.Name + " is not raised: " + alone + ", but then " + users + " would not fit."
            : Chosen is null && Alone.Harvest.Margin.Value.Amount <= 0 ? Candidate.Name + " is not raised: it loses money on every day considered."
            : Chosen is null ? Candidate.Name + " is not raised: it does not fit within the limits."
            : Chosen == Alone ? Candidate.Name + " is raised as it would be alone: the margin of the batch decides."
            : GivenUp == Money.Zero ? Candidate.Name + " is raised on other days than alone, which bring as much."
            : FreedDays > 0 ? string.Create(CultureInfo.InvariantCulture, $"{Candidate.Name} frees its shelters {FreedDays} d earlier than alone, and {string.Join(" and ", FreedFor)} {(FreedFor.Count > 1 ? "use" : "uses")} them: {alone}. Here the margin by shelter-day decides.")
            : GaveWayTo.Count > 0 ? Candidate.Name + " gives way to " + users + ": " + alone + "."
            : Candidate.Name + " is not raised as it would be alone, which does not fit within the limits: " + alone + ".";
    }
}
