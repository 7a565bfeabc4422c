using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What a plant charges and what it takes: ask for it in writing. Cutting and packing are charged by the order (Carcass).</summary>
public sealed class PlantTerms
{
    /// <summary>For each bird killed, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money PerBird { get; init => field = NotNegative(value, nameof(PerBird)); }

    /// <summary>The least that a visit costs, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money LeastCharge { get; init => field = NotNegative(value, nameof(LeastCharge)); }

    /// <summary>Lost when the date is given up, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money Deposit { get; init => field = NotNegative(value, nameof(Deposit)); }

    /// <summary>For each bird booked that does not come, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money PerMissingBird { get; init => field = NotNegative(value, nameof(PerMissingBird)); }

    /// <summary>For each bird condemned, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money PerCondemnedBird { get; init => field = NotNegative(value, nameof(PerCondemnedBird)); }

    /// <summary>For each bird that comes with a full crop, 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public Money PerFullCrop { get; init => field = NotNegative(value, nameof(PerFullCrop)); }

    /// <summary>The fewest birds that the plant opens for; 0 where it says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0.</exception>
    public int FewestBirds { get; init => field = Require.AtLeast(value, 0, nameof(FewestBirds)); }

    /// <summary>The most birds that the plant takes on the day; null where it says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 1.</exception>
    public int? MostBirds { get; init => field = value is { } most ? Require.AtLeast(most, 1, nameof(MostBirds)) : null; }

    /// <summary>Birds lighter than this are not taken, or not cut; null where the plant says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Mass? LightestBird { get; init => field = Weight(value, nameof(LightestBird)); }

    /// <summary>Birds heavier than this do not fit the line; null where the plant says nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public Mass? HeaviestBird { get; init => field = Weight(value, nameof(HeaviestBird)); }

    /// <summary>The same charges for a day with its own numbers of birds.</summary>
    /// <param name="fewestBirds">The fewest birds that the plant opens for, 0 or more.</param>
    /// <param name="mostBirds">The most that it takes, 1 or more; null where it says nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public PlantTerms With(int fewestBirds, int? mostBirds) => new()
    {
        PerBird = PerBird,
        LeastCharge = LeastCharge,
        Deposit = Deposit,
        PerMissingBird = PerMissingBird,
        PerCondemnedBird = PerCondemnedBird,
        PerFullCrop = PerFullCrop,
        FewestBirds = fewestBirds,
        MostBirds = mostBirds,
        LightestBird = LightestBird,
        HeaviestBird = HeaviestBird,
    };

    /// <summary>What killing costs, cutting and packing apart.</summary>
    /// <param name="bookedBirds">Birds booked, 0 or more.</param>
    /// <param name="deliveredBirds">Birds that came alive, 0 or more.</param>
    /// <param name="condemnedBirds">Birds condemned, of those delivered; 0 or more.</param>
    /// <param name="fullCropBirds">Birds with full crops, of those delivered; 0 or more.</param>
    /// <returns>Fee a bird, at least the least charge, and what is charged for birds missing, condemned and full.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number of birds is negative or not finite.</exception>
    public Money ChargeFor(double bookedBirds, double deliveredBirds, double condemnedBirds = 0, double fullCropBirds = 0)
    {
        Require.NotNegative(bookedBirds, "birds");
        double killed = Require.NotNegative(deliveredBirds, "birds");
        return Money.Of(
            Math.Max(LeastCharge.Amount, PerBird.Amount * killed)
            + (PerMissingBird.Amount * Math.Max(0, bookedBirds - killed))
            + (PerCondemnedBird.Amount * Require.NotNegative(condemnedBirds, "birds"))
            + (PerFullCrop.Amount * Require.NotNegative(fullCropBirds, "birds")));
    }

    /// <summary>As in <c>4.50 a bird, at least 200.00, 50 birds or more</c>, in every culture.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{PerBird} a bird, at least {LeastCharge}, {FewestBirds} birds or more") + (MostBirds is { } most ? string.Create(CultureInfo.InvariantCulture, $", at most {most}") : "");

    private static Mass? Weight(Mass? weight, string name)
    {
        _ = weight is { } bird ? Require.Positive(bird.Kilograms, "kg", name) : 0;
        return weight;
    }

    private static Money NotNegative(Money money, string name) => Money.Of(Require.NotNegative(money.Amount, "", name));
}
