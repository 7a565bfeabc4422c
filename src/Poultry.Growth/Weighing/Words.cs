using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Weighing;

/// <summary>Numbers in the sentences of this room, in every culture alike.</summary>
internal static class Words
{
    public static string Percent(double fraction) => string.Create(CultureInfo.InvariantCulture, $"{100 * fraction:0.#} %");

    public static string Times(double factor) => string.Create(CultureInfo.InvariantCulture, $"{factor:G3} times");

    public static string Whose(Sex sex) => sex switch { Sex.Male => "cockerels", Sex.Female => "pullets", _ => "birds" };
}
