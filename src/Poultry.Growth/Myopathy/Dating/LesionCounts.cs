using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Myopathy;

/// <summary>Lesions found, by their look. Count a bird once, by its older side: the two sides of a bird mostly come from one event.</summary>
public sealed class LesionCounts
{
    private readonly int[] counts;

    private LesionCounts(int[] counts) => this.counts = counts;

    /// <summary>All of them.</summary>
    public int Total => counts.Sum();

    /// <summary>Red and pink ones: from the last four days or so.</summary>
    public int Recent => this[LesionStage.Red] + this[LesionStage.Pink];

    /// <summary>Green and grey ones: five days old or more.</summary>
    public int Old => this[LesionStage.Green] + this[LesionStage.Grey];

    /// <summary>How many look so.</summary>
    public int this[LesionStage stage] => counts[(int)stage];

    /// <summary>Counts by stage.</summary>
    /// <param name="red">Stage I, 0 or more.</param>
    /// <param name="pink">Stage II, 0 or more.</param>
    /// <param name="green">Stage III, 0 or more.</param>
    /// <param name="grey">Stage IV, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative.</exception>
    /// <exception cref="ArgumentException">There is none at all.</exception>
    public static LesionCounts Of(int red = 0, int pink = 0, int green = 0, int grey = 0)
    {
        int[] counts = [Require.AtLeast(red, 0), Require.AtLeast(pink, 0), Require.AtLeast(green, 0), Require.AtLeast(grey, 0)];
        return counts.Sum() > 0 ? new(counts) : throw new ArgumentException("No lesion was counted; expected at least one.", nameof(red));
    }

    /// <summary>As in <c>2 red, 5 green</c>, in every culture.</summary>
    public override string ToString() => string.Join(", ", Enum.GetValues<LesionStage>().Where(stage => this[stage] > 0)
        .Select(stage => string.Create(CultureInfo.InvariantCulture, $"{this[stage]} {Name(stage)}")));

    private static string Name(LesionStage stage) => stage switch
    {
        LesionStage.Red => "red",
        LesionStage.Pink => "pink",
        LesionStage.Green => "green",
        _ => "grey",
    };
}
