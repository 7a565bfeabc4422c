using MathNet.Numerics.LinearAlgebra;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>Curves against printed parameters, and tables as curves.</summary>
/// <remarks>
/// Eleroglu et al. print parameters (t in weeks, A in g, birds of 0 to 6 weeks) and what they computed from them. Tolerance 0.5 %, not half of the last printed digit: the parameters have
/// three or four digits, and the largest difference, 0.49 % in the Gompertz gain, is more than their rounding explains (k to three digits is 0.14 %), so the authors computed from
/// something else than what they print. By hand from the printed parameters: ln(b)/k, A/e, k A/e; ln(b)/k, A/2, k A/4.
/// </remarks>
internal static class CurvesChecks
{
    private const string Eleroglu = "Eleroglu et al. 2016, Poultry Studies 13(2):12-16, abstract";
    private const string Korean = "Korean J. Poult. Sci. 50(2):91, Table 2";
    private const string Objectives = "a breeder's objectives, Indian River 2012, weekly rows; another program";

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        .. Inflection(
            "gompertz", GompertzCurve.FromConstant(Mass.FromGrams(4364.53), DailyRate.FromPerWeek(0.356), 4.62), (4.31, 1605.79, 568.82), (4.299, 1605.62, 571.60)),
        .. Inflection(
            "logistic", LogisticCurve.Of(Mass.FromGrams(3010.32), DailyRate.FromPerWeek(0.835), Age.FromWeeks(Math.Log(31.52) / 0.835)), (4.13, 1505.16, 628.17), (4.132, 1505.16, 628.40)),
        .. DaysTo850Grams("KNC-SCYC", 10.324, 52.172, 41.5, 46.7, 46.73),
        .. DaysTo850Grams("KNC-SCYD", 9.6195, 49.081, 41.5, 48.8, 48.75),
        .. DaysTo850Grams("KNC-SDYC", 10.302, 49.426, 42.6, 47.4, 47.41),
        .. DaysTo850Grams("KNC-SDYD", 11.209, 46.567, 40.9, 46.7, 46.68),
        .. DaysTo850Grams("KNC-SYYC", 11.44, 48.136, 41.2, 45.9, 45.95),
        .. DaysTo850Grams("KNC-SYYD", 11.765, 46.744, 41.5, 45.8, 45.77),
        .. DaysTo850Grams("GSP-Hanhyup", 15.196, 69.624, 39.4, 37.5, 37.55),
        .. DaysTo850Grams("Baeksemi", 27.059, 30.226, 45.5, 34.5, 34.46),
        .. LeastSquaresPoint("male", 70, 7320.86, 0.0393155, 39.3619),
        .. LeastSquaresPoint("male", 56, 7021.81, 0.0408095, 38.2121),
        .. LeastSquaresPoint("female", 70, 5680.37, 0.0407965, 36.4422),
        .. OnRecord("male", Objectives2012.Males, (14.8, 24.2), (2683.3, 105.83, 66.2)),
        .. OnRecord("female", Objectives2012.Females, (14.0, 26.8), (2091.4, 85.18, 68.8)),
    ];

    public static IReadOnlyList<string> NotChecked { get; } =
    [
        "Weights by age of fast-growing birds kept outdoors to eight or nine weeks: nothing was to be had.",
    ];

    private static IEnumerable<OutsideCheck> Inflection(
        string family, GrowthCurve curve, (double Weeks, double Grams, double GramsPerWeek) printed, (double Weeks, double Grams, double GramsPerWeek) byHand)
    {
        Inflection inflection = curve.Inflection!;
        (string Id, string What, string Unit, double Printed, double ByHand, double HalfDigit, Func<double> Got)[] rows =
        [
            ("a", "age of highest gain", "wk", printed.Weeks, byHand.Weeks, 0.0005, () => inflection.Age.Weeks),
            ("b", "weight there", "g", printed.Grams, byHand.Grams, 0.005, () => inflection.Weight.Grams),
            ("c", "highest gain", "g/wk", printed.GramsPerWeek, byHand.GramsPerWeek, 0.005, () => 7 * inflection.Gain.GramsPerDay),
        ];
        foreach (var row in rows)
        {
            yield return Read(family + "-" + row.Id, $"{row.What} of a printed {family} curve, within 0.5 % of what is printed", Eleroglu, row.Unit, row.Printed, 0.005 * row.Printed, row.Got);
            yield return Derived(family + "-" + row.Id + "2", "the same from the printed parameters by hand", Eleroglu, row.Unit, row.ByHand, row.HalfDigit, row.Got);
        }
    }

    /// <summary>
    /// Weight in g as a quadratic of age in weeks, which is no curve of this library: a table of its rows must find the age. Weekly rows within 0.1 d of the solved quadratic, daily ones
    /// within half of its last digit, and of the authors' with 0.01 d for the rounding of their coefficients.
    /// </summary>
    private static IEnumerable<OutsideCheck> DaysTo850Grams(string line, double a, double b, double c, double printedDays, double solvedDays)
    {
        double By(int stepDays)
        {
            (Age, Mass)[] rows =
            [
                .. Enumerable.Range(0, (70 / stepDays) + 1).Select(row => Age.FromDays(row * stepDays)).Select(age =>
                    (age, Mass.FromGrams((((a * age.Weeks) + b) * age.Weeks) + c))),
            ];
            return TabulatedCurve.Of(line, new Citation("KJPS50-91", "Korean Journal of Poultry Science 50(2):91", HowKnown.ReadInSource, "Table 2"), rows).AgeAt(Mass.FromGrams(850)).Age!.Value.Days;
        }

        yield return Derived(line + "-7", "days to 850 g in weekly rows of the printed quadratic, against the quadratic solved", Korean, "d", solvedDays, 0.1, () => By(7));
        yield return Derived(line + "-1", "the same in daily rows", Korean, "d", solvedDays, 0.005, () => By(1));
        yield return Read(line + "-1p", "the same, against what the authors print", Korean, "d", printedDays, 0.05 + 0.01, () => By(1));
    }

    /// <summary>
    /// The least-squares point is where one more Gauss-Newton step goes nowhere: from parameters that another program found it must stay within half of their last digit, which holds
    /// weights and gradient.
    /// </summary>
    private static IEnumerable<OutsideCheck> LeastSquaresPoint(string sex, double lastDays, double grams, double ratePerDay, double inflectionDays)
    {
        Lazy<Vector<double>> step = new(() =>
        {
            (double Days, double Grams)[] rows = [.. Objectives2012.Rows(sex).Where(row => row.Days <= lastDays)];
            double[] kilograms = new double[rows.Length];
            double[] gradient = new double[3 * rows.Length];
            CurveFamilies.Gompertz.Evaluate([grams / 1000, ratePerDay, inflectionDays], [.. rows.Select(row => row.Days)], kilograms, gradient).Should().BeTrue();
            double[] rest = [.. kilograms.Select((curve, row) => (rows[row].Grams / 1000) - curve)];
            return Matrix<double>.Build.Dense(rows.Length, 3, gradient).QR().Solve(Vector<double>.Build.Dense(rest));
        });
        string id = FormattableString.Invariant($"{sex}-{lastDays}-");
        string what = FormattableString.Invariant($" of the Gompertz curve of least squares, {sex}s to {lastDays} d");
        yield return Recomputed(id + "A", "A" + what, Objectives, "g", grams, 0.005, () => grams + (1000 * step.Value[0]));
        yield return Recomputed(id + "k", "k" + what, Objectives, "1/d", ratePerDay, 0.00000005, () => ratePerDay + step.Value[1]);
        yield return Recomputed(id + "t", "t*" + what, Objectives, "d", inflectionDays, 0.00005, () => inflectionDays + step.Value[2]);
    }

    /// <summary>A fit that is on record without its rows and weights: no least-squares point of these rows, but it follows them as closely.</summary>
    private static IEnumerable<OutsideCheck> OnRecord(string sex, GompertzCurve curve, (double RmsGrams, double LargestGrams) distance, (double Grams, double GramsPerDay, double HatchGrams) derived)
    {
        double[] Rest() => [.. Objectives2012.Rows(sex).Select(row => row.Grams - curve.WeightAt(Age.FromDays(row.Days)).Grams)];
        string what = $", Gompertz fit on record, {sex}s";
        yield return Recomputed(sex + "-rms", "root mean square distance from the rows" + what, Objectives, "g", distance.RmsGrams, 0.05, () => Math.Sqrt(Rest().Average(rest => rest * rest)));
        yield return Recomputed(sex + "-max", "largest distance" + what, Objectives, "g", distance.LargestGrams, 0.05, () => Rest().Max(Math.Abs));
        yield return Recomputed(sex + "-g", "weight at the highest gain" + what, Objectives, "g", derived.Grams, 0.05, () => curve.Inflection!.Weight.Grams);
        yield return Recomputed(sex + "-gain", "highest gain" + what, Objectives, "g/d", derived.GramsPerDay, 0.005, () => curve.Inflection!.Gain.GramsPerDay);
        yield return Recomputed(sex + "-hatch", "weight at hatch" + what, Objectives, "g", derived.HatchGrams, 0.05, () => curve.WeightAt(Age.Hatch).Grams);
    }
}
