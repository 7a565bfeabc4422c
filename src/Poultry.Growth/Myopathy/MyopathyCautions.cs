using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>What a reader of this room's results must mind, the gravest first.</summary>
internal static class MyopathyCautions
{
    private const double OldestMeasuredDays = 65, YoungestMeasuredDays = 37;

    private const string NoOutdoorData = "no-outdoor-data";

    private static Caution Outdoor { get; } = new(
        NoOutdoorData, "No outdoor data: every survey and trial behind this is of birds kept indoors. For birds with access to the open it is a guess from indoors.");

    private static Caution Weak { get; } = new(
        "weak-evidence", "The mean rests on two surveys, and flocks differ a hundredfold: read the range, never the mean alone. Your own inspections soon know more.");

    public static IReadOnlyList<Caution> Of(BatchAtRisk batch, ModelInfo model)
    {
        List<Caution> cautions = [];
        Add(cautions, batch.IsOutdoor, Outdoor);
        Add(cautions, model == PlanningRisk.PublishedModel, Weak);
        AddAges(cautions, batch.KillAge);
        Add(
            cautions,
            batch.KillAge.Days is >= YoungestMeasuredDays && batch.KillAge < AgeSusceptibility.Full,
            new("age-twice", "The surveys held birds of 37 to 65 d, so their mean may allow for younger birds already: below 45 d the share may be too low here."));
        Add(
            cautions,
            batch.LiveWeight is { Kilograms: < 2.0 or > 3.6 },
            new("outside-measured-weights", "Carcasses behind this came from birds of " + WeightText.Of(2.0) + " to " + WeightText.Of(3.6) + "; outside that it is untested."));
        foreach (OddsRatio ratio in PlanningFigures.For(batch).Where(ratio => ratio.Value != 1))
        {
            cautions.Add(new("assumed-" + ratio.Code, "Asked for: " + ratio + ". Basis: " + ratio.Basis + "."));
        }

        return cautions;
    }

    public static IReadOnlyList<Caution> Of(DisturbanceLog log, Age killAge, bool isOutdoor)
    {
        Disturbance[] bare = [.. log.Where(disturbance => disturbance.Dose is null)];
        List<Caution> cautions = [];
        Add(cautions, isOutdoor, Outdoor);
        Add(cautions, bare.Length < log.Count, new("dose-is-a-guess", "The share of birds and their cycles are your guess: nobody has published flaps per bird in the field. The rate is no better than that guess."));
        Add(cautions, bare.Length == log.Count, new("dates-no-rate", "No disturbance has a dose: the log gives dates, no rate."));
        Add(cautions, bare.Length > 0 && bare.Length < log.Count, new("some-without-dose", string.Create(CultureInfo.InvariantCulture, $"{bare.Length} of {log.Count} disturbances have no dose and add nothing: the rate is too low by what they did.")));
        Add(cautions, log.Any(disturbance => disturbance.Dose is { HighCycles: > 20 }), new("beyond-measured-dose", "Above 20 cycles nothing was measured: the curve is drawn further by itself."));
        Add(cautions, log.Any(disturbance => disturbance.Dose is not null), new("no-sum-with-planning", "This starts from an undisturbed flock. It is never added to what the planning model says, which holds average events already."));
        AddAges(cautions, killAge);
        return cautions;
    }

    public static IReadOnlyList<Caution> OfDating(LesionCounts found, int unexplained, IReadOnlyList<RankedDisturbance>? ranked)
    {
        List<Caution> cautions =
        [
            new(NoOutdoorData, "No outdoor data: how lesions change with time was seen in one trial of birds kept indoors."),
            new("no-single-day", "The look of a lesion gives windows of days, fitted to that trial. No single day can be named."),
        ];
        Add(cautions, found.Recent > 0, new("bruises", "Fresh red lesions may be bruises of catching, which are not this lesion."));
        Add(cautions, found.Recent > 0 && found.Old > 0, new("several-events", "Fresh and old lesions together point to more than one disturbance."));
        Add(cautions, unexplained > 0, new("unexplained", string.Create(
            CultureInfo.InvariantCulture,
            $"{unexplained} of {found.Total} lesions have a look that {(ranked is null ? "no day since the birds became susceptible" : "none of the logged disturbances")} can have made; they are left out.")));
        Add(cautions, ranked is not null, new("logged-only", "Only logged disturbances are considered; what nobody saw may have done it. Beyond 14 d before killing the look tells them apart no more."));
        Add(cautions, ranked is { } rows && rows.Zip(rows.Skip(1)).Any(pair => pair.First.Share == pair.Second.Share && pair.First.ExpectedBirds > 0), new("tie", "Some disturbances are equally likely: their order says nothing."));
        return cautions;
    }

    public static IReadOnlyList<Caution> OfLearning(int batches, int found, int opened, double levelHigh)
    {
        List<Caution> cautions =
        [
            new(NoOutdoorData, "No outdoor data: what is known beforehand comes from birds kept indoors. The farm's own inspections take its place as they add up."),
        ];
        if (batches == 0)
        {
            cautions.Add(new("no-inspections", "No inspection yet: this is what is known of any farm."));
        }
        else if (found == 0)
        {
            cautions.Add(new("zeros-mean-below", string.Create(
                CultureInfo.InvariantCulture, $"No lesion in {opened} birds does not mean none: it means a level below about {100 * levelHigh:G2} % of birds (19 chances in 20).")));
        }

        cautions.Add(new("batches-not-birds", "One more batch teaches more than more birds of the same batch: half the doubt is gone after about 15 batches of 200 to 600 birds."));
        cautions.Add(new("next-batch-uncertain", "The next batch stays uncertain however long the record is: batches of one farm differ that much."));
        Add(cautions, batches > 0, new("found-is-not-all", "The rate is of lesions found. Inspections that miss fresh lesions, or batches opened because something was seen, make it wrong."));
        return cautions;
    }

    private static void AddAges(List<Caution> cautions, Age killAge)
    {
        Add(
            cautions,
            killAge.Days is < YoungestMeasuredDays or > OldestMeasuredDays,
            new("outside-measured-ages", string.Create(
                CultureInfo.InvariantCulture,
                $"Measured in fast-growing birds killed at {YoungestMeasuredDays} to {OldestMeasuredDays} d; at {killAge.Days:0.##} d it is not supported. Of slow-growing birds nothing is known.")));
    }

    private static void Add(List<Caution> cautions, bool holds, Caution caution)
    {
        if (holds)
        {
            cautions.Add(caution);
        }
    }
}
