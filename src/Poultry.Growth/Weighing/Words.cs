using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>Numbers in the sentences of this room, in every culture alike.</summary>
internal static class Words
{
    public static string Percent(double fraction) => string.Create(CultureInfo.InvariantCulture, $"{100 * fraction:0.#} %");

    public static string Times(double factor) => string.Create(CultureInfo.InvariantCulture, $"{factor:G3} times");

    /// <summary>As in <c>14 d: 20 birds, mean 428 g (15.1 oz), SD 37 g (1.31 oz)</c>; without the SD where it is not known.</summary>
    public static string Weighed(Age age, int birds, double meanKilograms, double? deviationKilograms) =>
        age + ": " + CountText.Of(birds, "bird") + ", mean " + WeightText.Of(meanKilograms) + (deviationKilograms is { } deviation ? ", SD " + WeightText.Of(deviation) : "");

    public static string Whose(Sex sex) => sex switch { Sex.Male => "cockerels", Sex.Female => "pullets", _ => "birds" };
}
