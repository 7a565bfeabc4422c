using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Calculators.Weighing;

/// <summary>Weigh-ins by themselves as a table, cautions and sources.</summary>
internal static class WeighPage
{
    public static void Print(WeighAnswer answer, Page page)
    {
        page.Line("Weigh-ins of " + answer.Reading.File + ": " + answer.Reading.Series);
        page.PassedOver(answer.Reading);
        page.Title("By age (low and high: where the flock's mean lies with a chance of " + Numbers.Percent(answer.Level) + " %, if the birds were caught at random)");
        ByAge(answer, page);
        if (answer.ByAge.Any(age => age.Basis == UniformityBasis.NormalCurve))
        {
            page.Line("~ worked out from the CV as if weights followed the normal curve; the others were counted");
        }

        page.Title("Birds to weigh");
        BirdsToWeigh(answer, page);
        page.Flagged(answer.Reading.Suspicions);
        page.Cautions(answer.Cautions);
        page.Sources(WeighAnswer.Sources);
    }

    private static void ByAge(WeighAnswer answer, Page page)
    {
        string unit = page.Units.Weight;
        bool sexed = answer.ByAge.Any(age => age.Sex != Sex.Mixed);
        string[] sex = sexed ? ["<sex"] : [];
        page.Table(
            ["age d", "date", .. sex, "birds", "mean " + unit, "low", "high", "SD " + unit, "CV %", "within 10 % of mean, %", "birds to weigh"],
            answer.ByAge.Select(age => (IReadOnlyList<string>)
            [
                Numbers.Days(age.Age),
                Numbers.Date(answer.Calendar.DateAt(age.Age)),
                .. sexed ? [Codes.Of(age.Sex)] : Array.Empty<string>(),
                Numbers.Whole(age.Birds),
                Numbers.Fixed(page.Units.Of(age.MeanWeight), 3),
                page.Units.Text(answer.MeanInterval(age).Low, 3),
                page.Units.Text(answer.MeanInterval(age).High, 3),
                age.StandardDeviation is { } deviation ? Numbers.Fixed(page.Units.Of(deviation), 3) : "-",
                age.CoefficientOfVariation is { } variation ? Numbers.Percent(variation, 1) : "-",
                age.ShareWithinTenPercent is { } share ? (age.Basis == UniformityBasis.NormalCurve ? "~ " : "") + Numbers.Percent(share) : "-",
                answer.BirdsFor(age.CoefficientOfVariation, answer.Flock) is { } birds ? Numbers.Whole(birds) : "-",
            ]));
    }

    private static void BirdsToWeigh(WeighAnswer answer, Page page)
    {
        if (answer.Spread is not { } spread || answer.BirdsFor(spread, null) is not { } birds)
        {
            page.Line(answer.Spread > 0
                ? "More than any flock holds, at the CV of " + Numbers.Percent(answer.Spread.Value) + " % of all weigh-ins together. Is a figure in another unit?"
                : "Unknown: these weigh-ins do not show how far birds lie apart. Weigh some birds singly.");
            return;
        }

        string flock = answer.Flock is { } all && answer.BirdsFor(spread, all) is { } ofFlock
            ? "; of a flock of " + Numbers.Whole(all) + ": " + Numbers.Whole(ofFlock)
            : "";
        page.Line(Numbers.Whole(birds) + flock + ". Then their mean lies within " + Numbers.Percent(answer.Precision, 1) + " % of the flock's with a chance of "
            + Numbers.Percent(answer.Level) + " %, at the CV of " + Numbers.Percent(spread, 1) + " % of all weigh-ins together.");
    }
}
