using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Curves;

/// <summary>A published table of live weight by age that comes with the library, to hold a batch against.</summary>
/// <remarks>
/// The era and the source matter more than anything else: at 56 d cockerels weigh 2.5 kg by a handbook of 1984 and 4.3 kg by an objective of 2012. For another table see
/// <see cref="TabulatedCurve.Of"/>. Immutable, and safe to share between threads.
/// </remarks>
public sealed class GrowthStandard
{
    internal GrowthStandard(string id, int? year, Sex sex, TabulatedCurve table) => (Id, Year, Sex, Table) = (id, year, sex, table);

    /// <summary>Every standard.</summary>
    public static IReadOnlyList<GrowthStandard> All => GrowthStandardTables.All;

    /// <summary>The caution that goes with a breeder's objective, and with a table of unknown kind.</summary>
    public static Caution Target { get; } = new(
        "standard-is-target",
        "A standard is mostly a breeder's objective: a target that the best flocks reach indoors. A batch behind it may be a good batch; compare strain, sex and year too.");

    /// <summary>A short name for programs and command lines, as in <c>objectives-2012-male</c>.</summary>
    public string Id { get; }

    /// <summary>The year for which the table was printed; null where its page bears none.</summary>
    public int? Year { get; }

    /// <summary>The birds it is about.</summary>
    public Sex Sex { get; }

    /// <summary>The weights, with source and cautions.</summary>
    public TabulatedCurve Table { get; }

    /// <summary>Whose table it is, of which birds, and its year.</summary>
    public string Name => Table.Model.Name;

    /// <summary>The standard of an id; null where there is none.</summary>
    /// <param name="id">As in <c>objectives-2012-male</c>; upper and lower case are alike.</param>
    public static GrowthStandard? Find(string id) => All.FirstOrDefault(standard => standard.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    /// <summary>Id and name in one line and in every culture.</summary>
    public override string ToString() => Id + ": " + Name;
}
