using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>The birth certificate of a model: what it says, in which symbols, from which source, measured where, how well.</summary>
public sealed class ModelInfo
{
    /// <summary>Describes a model.</summary>
    /// <param name="id">Short and unique, lower case with hyphens, as in <c>gompertz</c>.</param>
    /// <param name="name">As the trade calls it.</param>
    /// <param name="equation">In the source's symbols.</param>
    /// <param name="symbols">Every symbol of the equation.</param>
    /// <param name="citations">At least one.</param>
    /// <param name="accuracy">How well it agrees with what was measured, or why that cannot be said.</param>
    /// <param name="howKnown">How the figures in it are known, by the weakest of them.</param>
    /// <param name="ranges">Where it was measured; empty where the model is a form without figures of its own.</param>
    /// <exception cref="ArgumentException">A text, the symbols or the citations are empty.</exception>
    public ModelInfo(
        string id,
        string name,
        string equation,
        IReadOnlyList<ModelSymbol> symbols,
        IReadOnlyList<Citation> citations,
        string accuracy,
        HowKnown howKnown,
        IReadOnlyList<ValidityRange>? ranges = null)
    {
        Id = Require.Text(id);
        Name = Require.Text(name);
        Equation = Require.Text(equation);
        Symbols = Require.Some(symbols);
        Citations = Require.Some(citations);
        Accuracy = Require.Text(accuracy);
        HowKnown = howKnown;
        Ranges = ranges ?? [];
    }

    /// <summary>Short and unique, as in <c>gompertz</c>.</summary>
    public string Id { get; }

    /// <summary>As the trade calls it.</summary>
    public string Name { get; }

    /// <summary>In the source's symbols.</summary>
    public string Equation { get; }

    /// <summary>Every symbol of the equation.</summary>
    public IReadOnlyList<ModelSymbol> Symbols { get; }

    /// <summary>Where it comes from.</summary>
    public IReadOnlyList<Citation> Citations { get; }

    /// <summary>How well it agrees with what was measured, or why that cannot be said.</summary>
    public string Accuracy { get; }

    /// <summary>How the figures in it are known, by the weakest of them.</summary>
    public HowKnown HowKnown { get; }

    /// <summary>Where it was measured; empty where the model is a form without figures of its own.</summary>
    public IReadOnlyList<ValidityRange> Ranges { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
