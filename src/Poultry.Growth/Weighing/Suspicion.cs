namespace Poultry.Growth.Weighing;

/// <summary>
/// A weight that looks wrong. It is a question to whoever weighed and nothing more: it is kept in the series
/// until <see cref="WeighInSeries.Without(IEnumerable{Suspicion})"/> leaves it out by name.
/// </summary>
public sealed class Suspicion
{
    /// <summary>Code of a mean far from what the other ages say: a wrong unit, a slipped decimal point, a wrong date.</summary>
    public const string UnlikeOtherAges = "unlike-other-ages";

    /// <summary>Code of a bird far from those weighed at the same age.</summary>
    public const string UnlikeFellows = "unlike-fellows";

    /// <summary>Code of a mean that falls with age, by more than the luck of the catch.</summary>
    public const string MeanFalls = "mean-falls";

    /// <summary>Code of a standard deviation above 40 % of the mean.</summary>
    public const string WideSpread = "wide-spread";

    internal Suspicion(string code, string text, WeighIn weighIn, int? bird = null) =>
        (Code, Text, WeighIn, BirdIndex) = (code, text, weighIn, bird);

    /// <summary>Stable, lower case with hyphens, for programs: one of the constants of this class.</summary>
    public string Code { get; }

    /// <summary>A plain sentence: the age, the weight, and what was expected.</summary>
    public string Text { get; }

    /// <summary>The weigh-in in question.</summary>
    public WeighIn WeighIn { get; }

    /// <summary>Which of its single birds, counted from 0; null where the whole weigh-in is meant.</summary>
    public int? BirdIndex { get; }

    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
