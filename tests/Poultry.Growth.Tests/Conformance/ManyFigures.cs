namespace Poultry.Growth.Tests.Conformance;

/// <summary>Many figures beside their references in one row, which speaks for the one that is furthest off.</summary>
internal static class ManyFigures
{
    /// <summary>
    /// The digits that all of them have right, up to those asked for: what lies behind is rounding, and differs from machine to machine.
    /// </summary>
    public static OutsideCheck Digits(string id, string what, string source, int asked, Func<IEnumerable<Compared>> figures)
    {
        Lazy<IReadOnlyList<Compared>> all = new(() => [.. figures()]);
        double OfTheWorst()
        {
            Compared worst = all.Value.MaxBy(figure => figure.Deviation);

            // Here too, for a failure must say which of them it is.
            worst.Deviation.Should().BeLessThanOrEqualTo(Math.Pow(10, -asked), "{0}", worst);
            return Math.Min(asked, Math.Floor(-Math.Log10(worst.Deviation)));
        }

        return OutsideCheck.Recomputed(id, what, source, "digits", asked, 0, OfTheWorst) with { Figures = () => all.Value.Count };
    }
}
