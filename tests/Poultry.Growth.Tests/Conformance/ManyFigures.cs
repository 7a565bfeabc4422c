namespace Poultry.Growth.Tests.Conformance;

/// <summary>Many figures beside their references in one row, which speaks for the one that is furthest off.</summary>
internal static class ManyFigures
{
    /// <summary>
    /// The digits that all of them have right, up to those asked for: what lies behind is rounding, and differs from machine to machine.
    /// </summary>
    public static OutsideCheck Digits(string id, string what, string source, int asked, Func<IEnumerable<Compared>> figures) => Row(
        id, what, source, "digits", asked, 0, figures, Math.Pow(10, -asked), worst => Math.Min(asked, Math.Floor(-Math.Log10(worst))));

    /// <summary>The largest deviation in percent of the reference.</summary>
    public static OutsideCheck Percent(string id, string what, string source, double tolerance, Func<IEnumerable<Compared>> figures) => Row(
        id, what + ": largest deviation", source, "%", 0, tolerance, figures, tolerance / 100, worst => 100 * worst);

    private static OutsideCheck Row(
        string id, string what, string source, string unit, double expected, double tolerance, Func<IEnumerable<Compared>> figures, double bound, Func<double, double> got)
    {
        Lazy<IReadOnlyList<Compared>> all = new(() => [.. figures()]);
        double Furthest()
        {
            Compared worst = all.Value.MaxBy(figure => figure.Deviation);

            // Here too, for a failure must say which of them it is.
            worst.Deviation.Should().BeLessThanOrEqualTo(bound, "{0}", worst);
            return got(worst.Deviation);
        }

        return OutsideCheck.Recomputed(id, what, source, unit, expected, tolerance, Furthest) with { Figures = () => all.Value.Count };
    }
}
