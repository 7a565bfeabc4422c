using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>What one disturbance did, by the likely guess of its dose.</summary>
public sealed class EventEffect
{
    internal EventEffect(Disturbance disturbance, Duration beforeKilling, Probability susceptible, Probability visible, MusclePrevalence? muscles, BirdPrevalence? birds, BirdPrevalence? shown) =>
        (Disturbance, BeforeKilling, Susceptible, Visible, Muscles, Birds, Shown) = (disturbance, beforeKilling, susceptible, visible, muscles, birds, shown);

    /// <summary>Which.</summary>
    public Disturbance Disturbance { get; }

    /// <summary>How long before killing it was.</summary>
    public Duration BeforeKilling { get; }

    /// <summary>How susceptible the birds were, as a part of that at 45 d.</summary>
    public Probability Susceptible { get; }

    /// <summary>The share of its lesions that show at cutting.</summary>
    public Probability Visible { get; }

    /// <summary>The share of the muscles of the birds that flapped; null without a dose.</summary>
    public MusclePrevalence? Muscles { get; }

    /// <summary>The share of the birds that flapped; null without a dose.</summary>
    public BirdPrevalence? Birds { get; }

    /// <summary>The share of the whole flock that has a lesion from it that shows; null without a dose.</summary>
    public BirdPrevalence? Shown { get; }

    /// <summary>The disturbance and the share of the flock in which it shows, where it has a dose.</summary>
    public override string ToString() => Disturbance + (Shown is { } shown ? ": shows in " + shown : ": no dose, no share");
}
