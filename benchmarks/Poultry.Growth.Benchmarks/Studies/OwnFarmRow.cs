namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>How the batches of a farm are drawn.</summary>
internal enum OwnFarmKind
{
    /// <summary>Gompertz curves, or the curves of a shape nearest to them.</summary>
    Gompertz,

    /// <summary>Curves of a shape through weights like those of published tables.</summary>
    Published,
}

/// <summary>A row of the study of own priors inside projections: farms alike but for their number.</summary>
internal sealed record OwnFarmRow(string Name, OwnFarmKind Kind, int PastBatches, double PastShape, double Shape, long Seed)
{
    /// <summary>Where weighing of the new batch stops, d; 0 for no weigh-in.</summary>
    public static IReadOnlyList<int> Stops { get; } = [0, 21, 28, 35, 42];

    /// <summary>Whether growth of the new batch is cut from a day on, which that of the past batches was not.</summary>
    public bool SlowsDown { get; init; }

    /// <summary>Whether the new batch is another strain: ln A -0.25, ln k -0.12, t* +3 d.</summary>
    public bool OtherStrain { get; init; }

    /// <summary>The coverage of the 90 % interval that is asked of the own prior at 56 d; less than it must come with a word.</summary>
    public double? AskedCoverage { get; init; }

    public static IReadOnlyList<OwnFarmRow> All { get; } =
    [
        .. new[] { 3, 10 }.SelectMany(Rows),
    ];

    private static IEnumerable<OwnFarmRow> Rows(int batches)
    {
        string past = batches + " batches: ";
        long seed = 2027_0301_000 + (100 * batches);
        OwnFarmRow Row(int number, string name, OwnFarmKind kind, double pastShape, double shape, double asked) =>
            new(past + name, kind, batches, pastShape, shape, seed + number) { AskedCoverage = asked };
        yield return Row(1, "G, Gompertz", OwnFarmKind.Gompertz, 0, 0, 0.85);
        yield return Row(2, "P -0.2, like published tables", OwnFarmKind.Published, -0.2, -0.2, 0.85);
        yield return Row(3, "P 0", OwnFarmKind.Published, 0, 0, 0.85);
        yield return Row(4, "P 0.3", OwnFarmKind.Published, 0.3, 0.3, 0.85);
        yield return Row(5, "P 1", OwnFarmKind.Published, 1, 1, 0.85);
        yield return Row(6, "M -0.2, matched Richards, past batches too", OwnFarmKind.Gompertz, -0.2, -0.2, 0.75);
        yield return Row(7, "M 0.3, past batches too", OwnFarmKind.Gompertz, 0.3, 0.3, 0.75);
        yield return Row(8, "M 1, past batches too", OwnFarmKind.Gompertz, 1, 1, 0.75);
        yield return Row(9, "M -0.2 after Gompertz batches", OwnFarmKind.Gompertz, 0, -0.2, 0.75);
        yield return Row(10, "M 0.3 after Gompertz batches", OwnFarmKind.Gompertz, 0, 0.3, 0.75);
        yield return Row(11, "M 1 after Gompertz batches", OwnFarmKind.Gompertz, 0, 1, 0.75);
        yield return new(past + "growth slows down by 5 to 25 %, after Gompertz batches", OwnFarmKind.Gompertz, batches, 0, 0, seed + 12) { SlowsDown = true };
        yield return new(past + "another strain, after Gompertz batches", OwnFarmKind.Gompertz, batches, 0, 0, seed + 13) { OtherStrain = true };
        yield return new(past + "another strain, M 0.3", OwnFarmKind.Gompertz, batches, 0, 0.3, seed + 14) { OtherStrain = true };
    }
}
