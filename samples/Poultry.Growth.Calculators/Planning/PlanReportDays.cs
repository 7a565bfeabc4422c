using System.Globalization;
using System.Xml.Linq;
using Poultry.Growth.Carcass;
using Poultry.Growth.Evidence;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Planning;

/// <summary>The days offered, a column each: figures stand below each other, and three days fit a phone.</summary>
internal static class PlanReportDays
{
    private const int ToATable = 3;

    public static XElement Of(PlanAnswer answer, Units units) => Parts.Beside(
        Parts.Below([Parts.Figure(PlanChart.Of(answer)), .. Tables("What each day brings", answer.Comparison, Money(answer.Comparison, units))]),
        Parts.Below([.. Tables("Birds, floor and orders", answer.Comparison, Birds(answer.Comparison, units)), Packs(answer.Comparison.Recommended, units)]));

    /// <summary>The chance that the day recommended beats another.</summary>
    public static Probability Beats(HarvestComparison comparison, HarvestOption other)
    {
        int PlaceOf(HarvestOption option) => comparison.Options.Index().First(place => place.Item == option).Index;
        return comparison.ChanceBeats(PlaceOf(comparison.Recommended), PlaceOf(other));
    }

    private static IEnumerable<XElement> Tables(string caption, HarvestComparison comparison, IEnumerable<(string What, Func<HarvestOption, ReportCell?> Of)> figures)
    {
        (string What, Func<HarvestOption, ReportCell?> Of)[] rows = [("this day is", day => Mark(comparison, day)), .. figures];
        return comparison.Options.Chunk(ToATable).Select(days => Parts.Table(
            caption,
            ["<what", .. days.Select(day => Numbers.Date(day.Date.Date))],
            rows.Where(row => comparison.Options.Any(day => row.Of(day) is not null)).Select(row => (IReadOnlyList<ReportCell>)[row.What, .. days.Select(day => row.Of(day) ?? "-")])));
    }

    private static XElement Packs(HarvestOption day, Units units) => Parts.Table(
        "Packs of " + day.Date,
        ["<pack", "sold", "left"],
        day.Packs.Select(pack => (IReadOnlyList<ReportCell>)
        [
            new(
                string.Create(CultureInfo.InvariantCulture, $"{pack.Offer.PiecesPerPack} {pack.Offer.Piece}"),
                Sizes(pack.Offer, units)),
            Range(pack.Sold, Numbers.Whole),
            Range(pack.Left, Numbers.Whole),
        ]));

    private static string Sizes(PackOffer offer, Units units) => (offer.From, offer.To) switch
    {
        (null, null) => "",
        (null, { } below) => "below " + units.Text(below, 2) + " " + units.Weight,
        ({ } from, null) => "from " + units.Text(from, 2) + " " + units.Weight,
        var (from, below) => units.Text(from, 2) + " to " + units.Text(below, 2) + " " + units.Weight,
    };

    private static ReportCell Mark(HarvestComparison comparison, HarvestOption day) =>
        new("", day == comparison.Recommended ? "recommended" : day.Date.IsBooked ? "booked" : "offered");

    private static IEnumerable<(string What, Func<HarvestOption, ReportCell?> Of)> Money(HarvestComparison comparison, Units units)
    {
        yield return ("margin", day => Money(day.Margin));
        yield return ("worst tenth", day => Whole(day.BadCase));
        yield return ("chance of a loss", day => day.ChanceOfLoss.ToString());
        yield return ("the recommended day beats it", day => comparison.Options.Count == 1 ? null : new ReportCell(day == comparison.Recommended ? "" : Beats(comparison, day).ToString()));
        yield return ("revenue", day => Money(day.Revenue));
        yield return ("cost", day => Money(day.Cost));
        yield return ("margin a bird", day => Range(day.MarginPerBird, Cents));
        yield return ("margin a " + units.Weight + " sold", day => day.MarginPerKilogram is { } money ? Range(money, amount => Cents(amount * (1 / units.OfKilograms(1)))) : null);
        yield return ("margin a shelter-day", day => Range(day.MarginPerShelterDay, Cents));
        yield return ("decide by", day => Numbers.Date(day.DecideBy));
    }

    private static IEnumerable<(string What, Func<HarvestOption, ReportCell?> Of)> Birds(HarvestComparison comparison, Units units)
    {
        yield return ("age, d", day => Numbers.Days(day.Age));
        yield return ("birds", day => Range(day.Head, Numbers.Whole));
        yield return ("mean live weight, " + units.Weight, day => Range(day.MeanWeight, weight => units.Text(weight, 2)));
        yield return ("birds of the weight wanted", day => day.ShareWanted is { } share ? Range(share, part => Numbers.Percent(part.Fraction) + " %") : null);
        yield return ("floor's limit kept", day => day.ChanceDensityMet is { } chance ? new(chance.ToString()) : null);
        yield return ("feed, " + units.Weight, day => Range(day.Feed, weight => units.Text(weight, 0)));
        yield return ("meat sold, " + units.Weight, day => Range(day.Sold, weight => units.Text(weight, 0)));
        yield return ("packs asked for that are filled", day => day.OrdersFilled.ToString());
        yield return ("chance of missing orders", day => day.ChanceOrdersMissed.ToString());
        yield return ("lost to dead tenders, " + units.Weight, day => day.LesionLoss.Interval.High?.Kilograms > 0 ? Range(day.LesionLoss, weight => units.Text(weight, 1)) : null);
        yield return ("more birds than the plant takes", day => day.ChanceTooManyBirds.ToString());
        yield return ("fewer than it opens for", day => day.ChanceTooFewBirds.ToString());
    }

    private static ReportCell Money(Estimate<Money> money) => Range(money, amount => Whole(amount));

    private static ReportCell Range<T>(Estimate<T> estimate, Func<T, string> text)
        where T : struct, IComparable<T> => new(text(estimate.Value), estimate.Interval is { Low: { } low, High: { } high } ? text(low) + " to " + text(high) : "");

    private static string Cents(Money money) => Numbers.Fixed(money.Amount, 2);

    private static string Whole(Money money) => Numbers.Whole(money.Amount);
}
