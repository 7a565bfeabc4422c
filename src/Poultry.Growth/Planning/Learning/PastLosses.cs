using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>What an earlier batch lost: of so many birds at an age, so many dead, culled or missing by another.</summary>
public sealed class PastLosses
{
    private PastLosses(int placed, int lost, Age from, Age to) => (Placed, Lost, From, To) = (placed, lost, from, to);

    /// <summary>Chicks placed alive.</summary>
    public int Placed { get; }

    /// <summary>Of them, dead, culled or missing.</summary>
    public int Lost { get; }

    /// <summary>Their age when placed.</summary>
    public Age From { get; }

    /// <summary>The age up to which losses were counted: that at killing.</summary>
    public Age To { get; }

    /// <summary>The losses of a batch.</summary>
    /// <param name="placed">Chicks placed alive, 1 or more.</param>
    /// <param name="lost">Of them, dead, culled or missing: 0 to all.</param>
    /// <param name="from">Their age when placed.</param>
    /// <param name="to">The age up to which losses were counted, later than <paramref name="from"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number or an age is out of its range.</exception>
    public static PastLosses Of(int placed, int lost, Age from, Age to)
    {
        Require.Above(to.Days, from.Days, "d", nameof(to));
        return new(Require.AtLeast(placed, 1), (int)Require.Between(lost, 0, placed, "birds"), from, to);
    }

    /// <summary>As in <c>38 of 300 birds, 1 d to 58 d</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Lost} of {Placed} birds, {From} to {To}");
}
