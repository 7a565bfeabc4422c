using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Carcass;

/// <summary>A printed share that belongs to no whole set of cuts: for comparison with one's own birds, not for calculation.</summary>
public sealed class PublishedShare
{
    internal PublishedShare(Citation source, string birds, string of, string part, double percent, Sex sex = Sex.Mixed, double? ageDays = null)
    {
        (Source, Birds, Of, Part, Sex) = (source, birds, of, part, sex);
        Share = Probability.FromPercent(percent);
        Age = ageDays is { } days ? Primitives.Age.FromDays(days) : null;
    }

    /// <summary>Where it is printed.</summary>
    public Citation Source { get; }

    /// <summary>The birds, as the source calls them.</summary>
    public string Birds { get; }

    /// <summary>Of what it is a share.</summary>
    public string Of { get; }

    /// <summary>The part.</summary>
    public string Part { get; }

    /// <summary>The share.</summary>
    public Probability Share { get; }

    /// <summary>Their sex; mixed where both or not stated.</summary>
    public Sex Sex { get; }

    /// <summary>Their age; null where it is not stated.</summary>
    public Age? Age { get; }

    /// <summary>In one line, as in <c>Cobb 500, 42 d: muscle in all 67 % of carcass</c>, in every culture.</summary>
    public override string ToString() => Birds + (Age is { } age ? ", " + age : "") + ": " + Part + string.Create(CultureInfo.InvariantCulture, $" {Share.Percent:0.##} % of {Of}");
}
