using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The section <c>plant</c> of a season file: when the plant kills, and at which ages birds may come.</summary>
internal sealed class SeasonDates
{
    private static readonly Age UsualYoungest = Age.FromDays(42), UsualOldest = Age.FromDays(70);

    private readonly IReadOnlyList<(DateOnly Date, int? MostBirds)>? days;
    private readonly Age youngest;
    private readonly Age oldest;

    private SeasonDates(IReadOnlyList<(DateOnly, int?)>? days, Age youngest, Age oldest) => (this.days, this.youngest, this.oldest) = (days, youngest, oldest);

    public static SeasonDates Read(JsonSection? section)
    {
        if (section is null)
        {
            return new(null, UsualYoungest, UsualOldest);
        }

        List<(DateOnly Date, int? MostBirds)> days = [];
        foreach (JsonValue item in section.List("dates", required: true, "a list of the plant's days, as in [{ \"date\": \"2027-06-08\", \"mostBirds\": 300 }]"))
        {
            if (JsonSection.Of(item, section.Problems) is { } day)
            {
                DateOnly? date = day.RequiredQuantity<DateOnly>("date", QuantityText.TryDate, "the day of killing, as in 2027-06-08");
                int? most = day.Whole("mostBirds", 1, 1_000_000);
                day.Close();
                if (date is { } named && days.Any(other => other.Date == named))
                {
                    day.Refuse("names a day a second time", "each day once");
                }

                days.Add((date ?? default, most));
            }
        }

        Age first = section.Quantity<Age>("youngest", QuantityText.TryAge, age => age.Days >= 15, "15d or more") ?? UsualYoungest;
        Age last = section.Quantity<Age>("oldest", QuantityText.TryAge, age => age.Days <= 120, "120d or less") ?? UsualOldest;
        section.Close();
        if (first > last)
        {
            section.Refuse("takes no bird: youngest is older than oldest", "youngest up to oldest");
        }

        return new(days, first, last);
    }

    /// <summary>The days on which birds that come on a day may be killed: the plant's, or those of the batch's own file.</summary>
    public IReadOnlyList<OfferedDate> For(BatchFileReading batch, DateOnly placed, bool isTheFilesOwn)
    {
        IReadOnlyList<OfferedDate> offered = batch.Harvest!.Dates;
        IEnumerable<OfferedDate> all = days is null ? offered : days.Select(day => On(offered, day.Date, day.MostBirds, isTheFilesOwn)).OrderBy(date => date.Date);
        return
        [
            .. all.Where(date => date.Date > placed).Where(date =>
            {
                Age age = Age.On(date.Date, placed, batch.Flock!.HeadCount.AgeAtPlacement);
                return age > batch.MoveOut && (days is null || (age >= youngest && age <= oldest));
            }),
        ];
    }

    /// <summary>Head that the plant takes on each day: as it says, else the least that a batch file says.</summary>
    public IReadOnlyDictionary<DateOnly, int> Head(IEnumerable<BatchFileReading> batches) =>
        (days ?? [.. batches.SelectMany(batch => batch.Harvest!.Dates).Select(date => (date.Date, date.Terms.MostBirds))])
            .Where(day => day.MostBirds is not null)
            .GroupBy(day => day.Date)
            .ToDictionary(day => day.Key, day => day.Min(stated => stated.MostBirds!.Value));

    /// <summary>A day on the terms of the batch's file. What is booked there is booked for its own batch.</summary>
    private static OfferedDate On(IReadOnlyList<OfferedDate> offered, DateOnly date, int? mostBirds, bool isTheFilesOwn)
    {
        OfferedDate? same = offered.FirstOrDefault(day => day.Date == date);
        if (same is not null && isTheFilesOwn)
        {
            return same;
        }

        OfferedDate like = same ?? offered[0];
        return new()
        {
            Date = date,
            Terms = like.Terms.With(like.Terms.FewestBirds, mostBirds ?? like.Terms.MostBirds),
            OffFeed = like.OffFeed,
            Road = like.Road,
            Arrival = like.Arrival,
            CollectAfterDays = like.CollectAfterDays,
        };
    }
}
