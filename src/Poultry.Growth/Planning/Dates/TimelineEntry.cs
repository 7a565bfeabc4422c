using System.Globalization;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Planning;

/// <summary>Something to do on a day of a batch's life.</summary>
public sealed class TimelineEntry
{
    internal TimelineEntry(DateOnly date, string what, string why, string record, Caution? caution = null, TimeOnly? time = null) =>
        (Date, What, Why, Record, Caution, Time) = (date, what, why, record, caution, time);

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>The time of day; null where any will do.</summary>
    public TimeOnly? Time { get; }

    /// <summary>What to do.</summary>
    public string What { get; }

    /// <summary>Why then.</summary>
    public string Why { get; }

    /// <summary>What to write down.</summary>
    public string Record { get; }

    /// <summary>What to mind; null where nothing stands out.</summary>
    public Caution? Caution { get; }

    /// <summary>As in <c>2027-06-08 07:00 Deliver the birds</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Date:yyyy-MM-dd}") + (Time is { } time ? string.Create(CultureInfo.InvariantCulture, $" {time:HH':'mm}") : "") + " " + What;
}
