using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>What each guide says about chicks of an age.</summary>
internal sealed class BrooderAnswer(int chicks, Age age)
{
    public int Chicks => chicks;

    public Age Age => age;

    /// <summary>The guides that say something about this age.</summary>
    public IReadOnlyList<(BroodingGuide Guide, BroodingStage Stage)> Guides { get; } =
        [.. BroodingGuide.All.Select(guide => (guide, guide.At(age))).Where(one => one.Item2 is not null).Select(one => (one.guide, one.Item2!))];

    /// <summary>Lamps of 250 W, from a warm room to a cool one.</summary>
    public (int Fewest, int Most) Lamps { get; } = HeatLamps.For(chicks);

    public static IReadOnlyList<Caution> Cautions => [BroodingGuide.WatchTheChicks];

    public IReadOnlyList<Citation> Sources => [.. Guides.SelectMany(one => one.Guide.Model.Citations), .. HeatLamps.Model.Citations];
}
