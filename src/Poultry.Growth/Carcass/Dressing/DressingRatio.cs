using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Carcass;

/// <summary>What part of a live bird its carcass is, with everything that makes the figure mean something: on which carcass, of a bird weighed in which state.</summary>
/// <remarks>
/// The eviscerated weight does not depend on the hours off feed up to 18 h (Buhr and Northcutt), the live weight does. A live weight is therefore
/// brought to the state in which the ratio was measured, once, and multiplied.
/// </remarks>
public sealed class DressingRatio
{
    private DressingRatio(string name, ModelInfo model, LikelyRange<Probability> ratio, CarcassBasis basis, LiveState measuredOn) =>
        (Name, Model, Ratio, Basis, MeasuredOn) = (name, model, ratio, basis, measuredOn);

    /// <summary>Short and unique among the published ones, lower case with hyphens, as in <c>rudn-42d</c>.</summary>
    public string Name { get; }

    /// <summary>Where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>Carcass over live weight; low and high are what one batch may show.</summary>
    public LikelyRange<Probability> Ratio { get; }

    /// <summary>What the carcass is.</summary>
    public CarcassBasis Basis { get; }

    /// <summary>The state in which the live birds were weighed.</summary>
    public LiveState MeasuredOn { get; }

    /// <summary>Whether condemned birds and trim are already in it, as in totals of a plant; they are not taken off again then.</summary>
    public bool IncludesCondemned { get; private init; }

    /// <summary>The kind of bird it stands for; null where it does not say.</summary>
    public BirdType? Type { get; private init; }

    /// <summary>The sex it was measured on; mixed where both or not stated.</summary>
    public Sex Sex { get; private init; }

    /// <summary>The age it was measured at; null where it is not stated.</summary>
    public Age? Age { get; private init; }

    /// <summary>The live weight it was measured at; null where it is not stated.</summary>
    public Mass? MeanLiveWeight { get; private init; }

    /// <summary>A ratio of one's own making.</summary>
    /// <param name="name">How to call it.</param>
    /// <param name="ratio">Carcass over live weight, 0.4 to 0.95.</param>
    /// <param name="basis">What the carcass is.</param>
    /// <param name="measuredOn">The state in which the live birds were weighed.</param>
    /// <param name="model">Where it comes from; one's own records where null.</param>
    /// <param name="includesCondemned">Whether condemned birds and trim are already in it, as in packed weight over the weight of all birds delivered.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ratio lies outside its range.</exception>
    public static DressingRatio Of(
        string name, LikelyRange<Probability> ratio, CarcassBasis basis, LiveState measuredOn, ModelInfo? model = null, bool includesCondemned = false)
    {
        ArgumentNullException.ThrowIfNull(ratio);
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(measuredOn);
        Require.Between(ratio.Low.Percent, 40, 95, "%", nameof(ratio));
        Require.Between(ratio.High.Percent, 40, 95, "%", nameof(ratio));
        return new(Require.Text(name), model ?? DressingSources.OwnRecords, ratio, basis, measuredOn) { IncludesCondemned = includesCondemned };
    }

    /// <summary>The same ratio with its basis as a type; there two can be compared.</summary>
    /// <typeparam name="TBasis">The basis it is taken to be on.</typeparam>
    /// <exception cref="ArgumentException">It is on another basis, or leaves open what that one states, as most published ratios do.</exception>
    public DressingRatio<TBasis> On<TBasis>()
        where TBasis : ICarcassBasis
    {
        Basis.RequireSame(TBasis.Basis, "The ratio " + Name + " is");
        return new(this);
    }

    /// <summary>What the carcasses of live birds weigh.</summary>
    /// <param name="live">The live weight, of a bird or of a flock, in its state.</param>
    /// <param name="atKilling">
    /// The state at killing. Needed only where the ratio does not state on which live weight it was measured: it is then taken for the weight at killing.
    /// </param>
    /// <param name="withdrawal">What birds lose off feed; the trade's usual where null.</param>
    /// <exception cref="ArgumentException">The state at killing is needed and not given.</exception>
    public CarcassWeight CarcassOf(LiveWeight live, LiveState? atKilling = null, FeedWithdrawal? withdrawal = null)
    {
        ArgumentNullException.ThrowIfNull(live);
        return CarcassWeight.Of(live.In(StateFor(live.State, atKilling), withdrawal).Weight * Ratio.Likely.Fraction, Basis);
    }

    /// <summary>This published ratio and the farm's own, weighed by how many batches stand behind the own one.</summary>
    /// <param name="own">The farm's own past.</param>
    /// <exception cref="ArgumentException">The published ratio is stated to be on another basis: the two can't be pooled. Or own batches lie so far apart that nothing follows from them.</exception>
    public DressingRatio PooledWith(PastDressing own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return Basis.Covers(own.Basis)
            ? new(Name + " and own batches", DressingPool.Model, DressingPool.Of(Ratio, own), own.Basis, own.MeasuredOn) { IncludesCondemned = true, Type = Type }
            : throw new ArgumentException("The own ratio is " + own.Basis + ", the published one " + Basis + "; expected the same basis, or one that is not stated.", nameof(own));
    }

    /// <summary>What to mind when it is used for a batch.</summary>
    /// <param name="sex">The birds' sex.</param>
    /// <param name="age">Their age; null where it is not known.</param>
    /// <param name="live">Their mean live weight, any.</param>
    public IReadOnlyList<Caution> CautionsFor(Sex sex, Age? age, Mass live) => DressingCautions.For(this, sex, age, live);

    /// <summary>In one line, as in <c>rudn-42d: 73.1 % (71.3 % to 74.9 %), hot or chilled not stated, ...</c>, in every culture.</summary>
    public override string ToString() => Name + ": " + Ratio + ", " + Basis + "; of live weight, " + MeasuredOn;

    /// <summary>The state to which the ratio refers, for a batch.</summary>
    internal LiveState StateFor(LiveState weighed, LiveState? atKilling) =>
        MeasuredOn.IsStated ? MeasuredOn
        : atKilling is { IsStated: true } ? atKilling
        : weighed.HoursOffFeed > 0 ? weighed
        : throw new ArgumentException(
            "The ratio " + Name + " does not state on which live weight it was measured, so it is taken for the weight at killing; expected the hours off feed to killing.", nameof(atKilling));

    /// <summary>A published ratio, in percent: from one trial, or a range of several.</summary>
    internal static DressingRatio Published(
        string name,
        ModelInfo model,
        (double Low, double Likely, double High) percent,
        CarcassBasis? basis = null,
        BirdType? type = null,
        Sex sex = Sex.Mixed,
        double? ageDays = null,
        double? liveGrams = null,
        bool includesCondemned = false) =>
        new(
            name,
            model,
            LikelyRange<Probability>.Of(Probability.FromPercent(percent.Low), Probability.FromPercent(percent.Likely), Probability.FromPercent(percent.High)),
            basis ?? CarcassBasis.NotStated,
            LiveState.NotStated)
        {
            Type = type,
            Sex = sex,
            Age = ageDays is { } days ? Primitives.Age.FromDays(days) : null,
            MeanLiveWeight = liveGrams is { } grams ? Mass.FromGrams(grams) : null,
            IncludesCondemned = includesCondemned,
        };
}
