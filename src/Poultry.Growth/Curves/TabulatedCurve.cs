using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Curves;

/// <summary>A growth curve read from a table of weights: a printed objective, a handbook standard, a farm's own past batch.</summary>
/// <remarks>
/// The curve goes through every row and rises between them without overshoot (monotone cubic). It says nothing before the first row or
/// after the last: asked there it refuses. Weights may stand still from row to row but not fall, for a bird that loses weight reaches
/// a weight twice, and <see cref="IGrowthCurve.AgeAt"/> would have no answer; a row that falls is mostly a misprint.
/// </remarks>
public sealed class TabulatedCurve : GrowthCurve
{
    private readonly double[] rowDays;
    private readonly double[] rowKilograms;
    private readonly double firstDays;
    private readonly double lastDays;
    private readonly MonotoneCubic curve;

    private TabulatedCurve(
        string name, Citation source, double[] rowDays, double[] rowKilograms, double[] days, double[] kilograms, IReadOnlyList<Caution> cautions)
    {
        (this.rowDays, this.rowKilograms) = (rowDays, rowKilograms);
        (firstDays, lastDays) = (days[0], days[^1]);
        curve = new MonotoneCubic(days, kilograms);
        Cautions = cautions;
        Model = new ModelInfo(
            "table",
            name,
            "W = table(t), a monotone cubic between the rows; no value outside them",
            [CurveSources.Weight, CurveSources.Age],
            [source, CurveSources.FritschCarlson1980],
            "Exact in the rows; between them an interpolation, which nobody measured.",
            source.HowKnown,
            [new ValidityRange("age", firstDays, lastDays, "d")]);
    }

    /// <summary>The name of the table, its source, and the ages it covers.</summary>
    public override ModelInfo Model { get; }

    /// <summary>What to mind when using the table, as given.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The rows in the order in which they were given; weights in kg.</summary>
    public IReadOnlyList<(Age Age, Mass Weight)> Rows =>
        [.. rowDays.Select((days, row) => (Age.FromDays(days), Mass.FromKilograms(rowKilograms[row])))];

    /// <summary>Always null: a table ends, it tends to no weight.</summary>
    public override Mass? MatureWeight => null;

    /// <summary>
    /// Where the gain of the interpolation is highest; null where gain is highest at an end of the table. Good to about half the distance
    /// of two rows: a smooth table of weekly rows tells the week, not the day.
    /// </summary>
    public override Inflection? Inflection =>
        curve.Steepest() is { } days ? new(days, Kilograms(days), KilogramsPerDay(days)) : null;

    private protected override string AgesCovered =>
        string.Create(CultureInfo.InvariantCulture, $"the table covers {firstDays} to {lastDays} d");

    /// <summary>The curve through the rows of a table.</summary>
    /// <param name="name">Whose table, of which birds, and its year, as in <c>Objective for males, 2012</c>.</param>
    /// <param name="source">Where the table is printed.</param>
    /// <param name="rows">Two or more rows in any order, no age twice; weights above 0 that do not fall with age.</param>
    /// <param name="cautions">What to mind when using the table: that an objective is a target, say.</param>
    /// <exception cref="ArgumentException">The name is empty, there are fewer than two rows, an age stands twice, or a weight falls.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is not above 0.</exception>
    public static TabulatedCurve Of(
        string name, Citation source, ReadOnlySpan<(Age Age, Mass Weight)> rows, params ReadOnlySpan<Caution> cautions)
    {
        Require.Text(name);
        ArgumentNullException.ThrowIfNull(source);
        if (rows.Length < 2)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"A curve needs two rows or more; {rows.Length} given."), nameof(rows));
        }

        double[] rowDays = new double[rows.Length];
        double[] rowKilograms = new double[rows.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            rowDays[i] = rows[i].Age.Days;
            rowKilograms[i] = Require.Positive(rows[i].Weight.Kilograms, "kg", nameof(rows));
        }

        double[] days = [.. rowDays];
        double[] kilograms = [.. rowKilograms];
        Array.Sort(days, kilograms);
        RequireRising(days, kilograms, nameof(rows));
        return new TabulatedCurve(name, source, rowDays, rowKilograms, days, kilograms, cautions.ToArray());
    }

    /// <summary>Whether an age lies between the first row and the last, both included.</summary>
    internal bool Covers(Age age) => curve.Covers(age.Days);

    private protected override double Kilograms(double days) => curve.Value(days);

    private protected override double KilogramsPerDay(double days) => curve.Slope(days);

    private protected override double DaysAt(double kilograms) => curve.Inverse(kilograms);

    private protected override AgeAtWeight AgeAtKilograms(double kilograms)
    {
        if (kilograms > Kilograms(lastDays))
        {
            return AgeAtWeight.BeyondTable(kilograms, lastDays);
        }

        return kilograms < Kilograms(firstDays) && firstDays > 0
            ? AgeAtWeight.BeforeTable(kilograms, firstDays)
            : base.AgeAtKilograms(kilograms);
    }

    private static void RequireRising(double[] days, double[] kilograms, string argument)
    {
        for (int i = 1; i < days.Length; i++)
        {
            if (days[i] == days[i - 1])
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"{days[i]} d stands in the table twice; each age once."), argument);
            }

            if (kilograms[i] < kilograms[i - 1])
            {
                throw new ArgumentException(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The weight falls from {WeightText.Of(kilograms[i - 1])} at {days[i - 1]} d to {WeightText.Of(kilograms[i])} at {days[i]} d; expected no fall."),
                    argument);
            }
        }
    }
}
