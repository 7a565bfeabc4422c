using Poultry.Growth.Primitives;

namespace Poultry.Growth.Evidence;

/// <summary>Something the reader of a number must know before acting on it.</summary>
public sealed class Caution : IEquatable<Caution>
{
    /// <summary>States a caution.</summary>
    /// <param name="code">Stable and unique, lower case with hyphens, for programs.</param>
    /// <param name="text">One or two plain sentences, for people.</param>
    /// <exception cref="ArgumentException">One of them is empty.</exception>
    public Caution(string code, string text) => (Code, Text) = (Require.Text(code), Require.Text(text));

    /// <summary>Stable and unique, for programs.</summary>
    public string Code { get; }

    /// <summary>Plain sentences, for people.</summary>
    public string Text { get; }

    /// <inheritdoc/>
    public bool Equals(Caution? other) => other is not null && Code == other.Code && Text == other.Text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Caution);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Code, Text);

    /// <summary>The text.</summary>
    public override string ToString() => Text;
}
