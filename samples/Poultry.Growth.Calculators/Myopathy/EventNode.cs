using Poultry.Growth.Myopathy;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>What one disturbance did; probabilities are of the birds that flapped, 0 to 1; null without a dose.</summary>
internal sealed record EventNode
{
    public required string What { get; init; }

    public required double AgeDays { get; init; }

    public required double DaysBefore { get; init; }

    /// <summary>As a part of that at 45 d.</summary>
    public required double Susceptible { get; init; }

    public required double? MuscleProbability { get; init; }

    public required double? BirdProbability { get; init; }

    /// <summary>The part of its lesions that shows at cutting.</summary>
    public required double Visible { get; init; }

    public required double? ShownPercent { get; init; }

    /// <summary>Of the flock, had it not happened.</summary>
    public required double? WithoutPercent { get; init; }

    public static EventNode Of(EventEffect effect, BirdPrevalence? without) => new()
    {
        What = effect.Disturbance.What,
        AgeDays = effect.Disturbance.Age.Days,
        DaysBefore = effect.BeforeKilling.Days,
        Susceptible = effect.Susceptible.Fraction,
        MuscleProbability = effect.Muscles?.Share.Fraction,
        BirdProbability = effect.Birds?.Share.Fraction,
        Visible = effect.Visible.Fraction,
        ShownPercent = effect.Shown?.Percent,
        WithoutPercent = without?.Percent,
    };
}
