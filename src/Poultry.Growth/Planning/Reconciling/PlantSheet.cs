using System.Globalization;
using Poultry.Growth.Carcass;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What came of a batch at the plant, as the plant's sheet, the inspector and the farm's own count at loading say.</summary>
/// <remarks>What was not counted is 0 or null, and is told as such: nothing is filled in from a forecast.</remarks>
public sealed class PlantSheet
{
    /// <summary>The day of killing.</summary>
    public required DateOnly Killed { get; init; }

    /// <summary>Birds unloaded, those dead on arrival among them; 1 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public required int Delivered { get; init => field = Require.AtLeast(value, 1, nameof(Delivered)); }

    /// <summary>Live weight of all of them on a scale; null where they were not weighed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Mass? LiveWeight { get; init => field = value is { } weight ? Mass.FromKilograms(Require.Positive(weight.Kilograms, "kg", nameof(LiveWeight))) : null; }

    /// <summary>Of those delivered, dead on arrival; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int DeadOnArrival { get; init => field = Require.AtLeast(value, 0, nameof(DeadOnArrival)); }

    /// <summary>What the inspector took out, with reasons.</summary>
    public IReadOnlyList<CondemnedLine> Condemned { get; init; } = [];

    /// <summary>Carcasses that passed, as the plant counted them; null where it did not say.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int? Passed { get; init => field = value is { } birds ? Require.AtLeast(birds, 0, nameof(Passed)) : null; }

    /// <summary>Of those that passed, kept by the farm and not sold; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Kept { get; init => field = Require.AtLeast(value, 0, nameof(Kept)); }

    /// <summary>Birds found dead on the farm, for who did not write them down day by day; 0 where they stand among the batch's deaths.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Dead { get; init => field = Require.AtLeast(value, 0, nameof(Dead)); }

    /// <summary>Birds culled on the farm, likewise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Culled { get; init => field = Require.AtLeast(value, 0, nameof(Culled)); }

    /// <summary>Birds that were missed at the farm's own counts: stolen, taken by a predator, never found; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Missing { get; init => field = Require.AtLeast(value, 0, nameof(Missing)); }

    /// <summary>Birds left alive on the farm; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int OnHand { get; init => field = Require.AtLeast(value, 0, nameof(OnHand)); }

    /// <summary>Feed that the batch ate, delivered less what was left on the day of killing; null where it was not written down here.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Mass? FeedEaten { get; init => field = value is { } weight ? Mass.FromKilograms(Require.Positive(weight.Kilograms, "kg", nameof(FeedEaten))) : null; }

    /// <summary>The packs, one a kind.</summary>
    public IReadOnlyList<PackedLine> Packs { get; init; } = [];

    /// <summary>Liver, heart and gizzard packed by themselves; null where there were none or they were not weighed.</summary>
    public Mass? Giblets { get; init; }

    /// <summary>What was on the scale with the packed carcasses.</summary>
    public CarcassBasis Basis { get; init; } = CarcassBasis.Of(CarcassCondition.Packed);

    /// <summary>Birds opened at both tenders; 0 where nobody looked.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int Opened { get; init => field = Require.AtLeast(value, 0, nameof(Opened)); }

    /// <summary>Lesions among the birds opened, by their look; null where none was found, or nobody looked.</summary>
    public LesionCounts? Lesions { get; init; }

    /// <summary>Whole birds condemned.</summary>
    public int CondemnedBirds => Condemned.Where(line => line.IsWholeBirds).Sum(line => line.Birds);

    /// <summary>All packs together, giblets packed by themselves left out.</summary>
    public Mass Packed => Mass.FromKilograms(Packs.Sum(pack => pack.Weight.Kilograms));

    /// <summary>As in <c>262 birds delivered on 2027-06-08, 553.2 kg (1219.6 lb) packed</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Delivered} birds delivered on {Killed:yyyy-MM-dd}, {WeightText.Of(Packed.Kilograms)} packed");
}
