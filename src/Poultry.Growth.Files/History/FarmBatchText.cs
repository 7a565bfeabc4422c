using System.Globalization;
using System.Text;
using Poultry.Growth.Carcass;
using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>A finished batch as files of the farm's history, which <see cref="FarmBatchFacts"/> reads back.</summary>
internal static class FarmBatchText
{
    /// <summary>The # line that weigh-in files and a farm's history share.</summary>
    public const string AgeAtPlacement = "age_at_placement_d";

    /// <summary>The file of a batch: # lines, then its weigh-ins as means.</summary>
    public static string Text(FarmBatch batch)
    {
        StringBuilder text = new();
        void Line(string name, string? value) => text.Append(value is null ? "" : "# " + name + ": " + value + "\n");
        text.Append("# A finished batch of the farm, written by reconcile: what the next plan learns from.\n");
        Line("strain", batch.Kind.Strain);
        Line("system", batch.Kind.System);
        Line("sex", batch.Kind.Sex switch { Sex.Male => "male", Sex.Female => "female", _ => "mixed" });
        Line("killed", batch.Killed is { } killed ? string.Create(CultureInfo.InvariantCulture, $"{killed:yyyy-MM-dd}") : null);
        if (batch.Losses is { } losses)
        {
            Line(AgeAtPlacement, Number(losses.From.Days));
            Line("placed_birds", Number(losses.Placed));
            Line("lost_birds", Number(losses.Lost));
            Line("age_at_killing", Number(losses.To.Days) + "d");
        }

        if (batch.Feed is { } feed)
        {
            Line("feed_eaten", Number(feed.Eaten.Kilograms) + "kg");
            Line("feed_expected", Number(feed.Expected.Kilograms) + "kg");
            Line("feed_model", feed.Model);
        }

        if (batch.Dressed is var (live, carcass))
        {
            Line("live_weight", Number(live.Weight.Kilograms) + "kg");
            Line("off_feed", Number(live.State.HoursOffFeed!.Value) + "h");
            Line("road", Number(live.State.RoadHours) + "h");
            Line("carcass_weight", Number(carcass.Weight.Kilograms) + "kg");
            Line("neck", Word(carcass.Basis.Neck));
            Line("giblets", Word(carcass.Basis.Giblets));
            Line("feet", Word(carcass.Basis.Feet));
        }

        text.Append("age_d,sex,mean_weight_kg,birds,sd_kg\n");

        // Two crates alike are one of twice the birds: a row that stands there twice would be taken for a slip.
        foreach (IGrouping<(string Start, string Sd), WeighIn> same in batch.Weights.WeighIns.GroupBy(Row))
        {
            text.Append(CultureInfo.InvariantCulture, $"{same.Key.Start},{same.Sum(weighIn => weighIn.BirdsWeighed)},{same.Key.Sd}\n");
        }

        return text.ToString();
    }

    /// <summary>The inspection of a batch as a table by itself; null where nobody looked.</summary>
    public static string? InspectionText(FarmBatch batch) => batch.Inspection is not { } inspection
        ? null
        : "batch,killed,birds_opened,birds_found,detection_percent\n" + string.Create(
            CultureInfo.InvariantCulture, $"{batch.Name},{inspection.Killed:yyyy-MM-dd},{inspection.Opened},{inspection.Found},{inspection.Detection.Percent:0.######}\n");

    private static (string Start, string Sd) Row(WeighIn weighIn) => (
        Number(weighIn.Age.Days) + "," + (weighIn.Sex switch { Sex.Male => "male", Sex.Female => "female", _ => "" }) + "," + Number(weighIn.MeanWeight.Kilograms),
        weighIn.StandardDeviation is { } sd ? Number(sd.Kilograms) : "");

    private static string Number(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);

    private static string? Word(Inclusion inclusion) => inclusion switch { Inclusion.With => "with", Inclusion.Without => "without", _ => null };
}
