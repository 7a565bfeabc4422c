using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Korean Journal of Poultry Science 50(2):91, Table 2: weight in g as a quadratic of age in weeks for eight slow lines, and the authors'
/// days to 850 g. The last column solves their quadratic (own arithmetic).
/// </summary>
/// <remarks>
/// The quadratic is no curve of this library. What the table checks is a <see cref="TabulatedCurve"/>: given weekly weights, as a handbook
/// prints them, it must answer the age at a weight within 0.1 d of the law behind the rows; given daily weights within half of the
/// last digit of the solved column, 0.005 d, and of the printed one, 0.05 d with 0.01 d for the rounding of their coefficients.
/// </remarks>
public class KoreanAgeAtWeightTests
{
    private static readonly Citation Source = new(
        "KJPS50-91", "Korean Journal of Poultry Science 50(2):91", HowKnown.ReadInSource, "Table 2");

    public static TheoryData<string, double, double, double, double, double> Lines => new()
    {
        { "KNC-SCYC", 10.324, 52.172, 41.5, 46.7, 46.73 },
        { "KNC-SCYD", 9.6195, 49.081, 41.5, 48.8, 48.75 },
        { "KNC-SDYC", 10.302, 49.426, 42.6, 47.4, 47.41 },
        { "KNC-SDYD", 11.209, 46.567, 40.9, 46.7, 46.68 },
        { "KNC-SYYC", 11.44, 48.136, 41.2, 45.9, 45.95 },
        { "KNC-SYYD", 11.765, 46.744, 41.5, 45.8, 45.77 },
        { "GSP-Hanhyup", 15.196, 69.624, 39.4, 37.5, 37.55 },
        { "Baeksemi", 27.059, 30.226, 45.5, 34.5, 34.46 },
    };

    [Theory, MemberData(nameof(Lines))]
    public void Weekly_rows_find_the_age_at_850_g(string line, double a, double b, double c, double printedDays, double solvedDays)
    {
        double days = DaysTo850Grams(line, a, b, c, stepDays: 7);
        days.Should().BeApproximately(solvedDays, 0.1);
        days.Should().BeApproximately(printedDays, 0.1 + 0.05);
    }

    [Theory, MemberData(nameof(Lines))]
    public void Daily_rows_find_it_to_the_printed_digit(string line, double a, double b, double c, double printedDays, double solvedDays)
    {
        double days = DaysTo850Grams(line, a, b, c, stepDays: 1);
        days.Should().BeApproximately(solvedDays, 0.005);
        days.Should().BeApproximately(printedDays, 0.05 + 0.01);
    }

    private static double DaysTo850Grams(string line, double a, double b, double c, int stepDays)
    {
        (Age, Mass)[] rows =
        [
            .. Enumerable.Range(0, (70 / stepDays) + 1).Select(row => Age.FromDays(row * stepDays)).Select(age =>
                (age, Mass.FromGrams((((a * age.Weeks) + b) * age.Weeks) + c))),
        ];
        return TabulatedCurve.Of(line, Source, rows).AgeAt(Mass.FromGrams(850)).Age!.Value.Days;
    }
}
