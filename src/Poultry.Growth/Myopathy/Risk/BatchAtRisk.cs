using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>What the planning model asks about a batch. What is not said has no effect: no assumption acts unasked.</summary>
public sealed class BatchAtRisk
{
    private readonly Mass? liveWeight;

    /// <summary>The age at which the birds are killed.</summary>
    public required Age KillAge { get; init; }

    /// <summary>Sex of the birds.</summary>
    /// <value>Mixed, half cockerels and half pullets.</value>
    public Sex Sex { get; init; }

    /// <summary>Whether the birds have access to the open. Nothing behind the model was measured on such birds; every result then opens with that.</summary>
    /// <value>True: who does not say so is warned.</value>
    public bool IsOutdoor { get; init; } = true;

    /// <summary>Mean live weight at killing, 10 g to 20 kg. It moves nothing (the best data show no effect); it is held against the weights that were measured, and its range is told.</summary>
    /// <value>Null: not known.</value>
    /// <exception cref="ArgumentOutOfRangeException">Out of that range.</exception>
    public Mass? LiveWeight
    {
        get => liveWeight;
        init => liveWeight = value is { } weight ? Mass.FromKilograms(Require.Between(weight.Kilograms, 0.01, 20, "kg", nameof(LiveWeight))) : null;
    }

    /// <summary>How prone the strain is.</summary>
    /// <value>Average: nothing is known about current strains.</value>
    public StrainRisk Strain { get; init; }

    /// <summary>Whether part of the flock was caught and taken 3 to 10 days before the rest is killed. Its odds ratio is an assumption.</summary>
    /// <value>False.</value>
    public bool IsThinned { get; init; }

    /// <summary>The share of birds that are severely lame (gait score 4 or 5). Its odds ratio is an assumption.</summary>
    /// <value>0.</value>
    public Probability SeverelyLame { get; init; }

    /// <summary>As in <c>killed at 45 d, outdoors</c>, in every culture.</summary>
    public override string ToString() => "killed at " + KillAge + (IsOutdoor ? ", outdoors" : ", indoors");
}
