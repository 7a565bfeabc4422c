using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>A live weight with the state in which it was weighed, so that what is lost off feed counts exactly once.</summary>
/// <remarks>A weight remembers its state, and <see cref="In"/> goes from one state to another: asked twice it changes nothing the second time.</remarks>
public sealed class LiveWeight
{
    private LiveWeight(double kilograms, LiveState state) => (Kilograms, State) = (kilograms, state);

    /// <summary>The weight, of a bird or of a flock.</summary>
    public Mass Weight => Mass.FromKilograms(Kilograms);

    /// <summary>The state in which it was weighed.</summary>
    public LiveState State { get; }

    internal double Kilograms { get; }

    /// <summary>A weight in a state.</summary>
    /// <param name="weight">Above 0.</param>
    /// <param name="state">Full-fed, or so many hours off feed.</param>
    /// <exception cref="ArgumentException">The state is not stated: whoever weighs a bird knows it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public static LiveWeight Of(Mass weight, LiveState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.IsStated
            ? new(Require.Positive(weight.Kilograms, "kg", nameof(weight)), state)
            : throw new ArgumentException("A live weight needs its state; expected full-fed, or hours off feed.", nameof(state));
    }

    /// <summary>A weight on the farm, with feed before the birds.</summary>
    /// <inheritdoc cref="Of"/>
    public static LiveWeight FullFed(Mass weight) => Of(weight, LiveState.FullFed);

    /// <summary>What the same birds weigh in another state.</summary>
    /// <param name="state">The other state.</param>
    /// <param name="withdrawal">What birds lose off feed; the trade's usual where null.</param>
    /// <exception cref="ArgumentException">The state is not stated.</exception>
    public LiveWeight In(LiveState state, FeedWithdrawal? withdrawal = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Of(Weight * Factor(State, state, withdrawal ?? FeedWithdrawal.Usual, lost => lost.Likely), state);
    }

    /// <summary>In one line, as in <c>3 kg (6.61 lb) full-fed</c>, in every culture.</summary>
    public override string ToString() => WeightText.Of(Kilograms) + " " + State;

    /// <summary>Weight in one state over the weight in another: (1 - s h)/(1 - s h').</summary>
    internal static double Factor(LiveState from, LiveState to, FeedWithdrawal withdrawal, Func<LikelyRange<Probability>, Probability> rate) =>
        from.Equals(to) ? 1 : Kept(to, withdrawal, rate) / Kept(from, withdrawal, rate);

    private static double Kept(LiveState state, FeedWithdrawal withdrawal, Func<LikelyRange<Probability>, Probability> rate) => state.HoursOffFeed is { } hours
        ? 1 - rate(withdrawal.ShareLost(Duration.FromHours(hours), Duration.FromHours(state.RoadHours))).Fraction
        : throw new ArgumentException("The state is not stated; expected full-fed, or hours off feed.", nameof(state));
}
