using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Batches of a season over the same pasture: how much land gives every spot its rest.</summary>
public sealed class PastureSeason
{
    private PastureSeason(PasturePlan batch, int batches, int intervalDays, Duration rest)
    {
        (Batch, Batches, Rest) = (batch, batches, rest);
        GroundPerSeason = Area.FromSquareMeters(batches * batch.GroundPerBatch.SquareMeters);
        Land = Area.FromSquareMeters(MostGroundWithin(batch, batches, intervalDays, (int)Math.Ceiling(rest.Days - 1e-9)));
    }

    /// <summary>What sources say about rest.</summary>
    public static Caution RestAdvice { get; } = new(
        "rest-advice",
        "Rest breaks the round of parasites and lets the sward come back. One association, told by ATTRA, rests meat-chicken land two months in every year and one year in every three, with four paddocks or more to a house. "
            + "Advice, second hand; your soil, rain and vet know better.");

    /// <summary>One batch.</summary>
    public PasturePlan Batch { get; }

    /// <summary>Batches in the season.</summary>
    public int Batches { get; }

    /// <summary>How long every spot rests before birds come back to it.</summary>
    public Duration Rest { get; }

    /// <summary>Fresh ground that all batches use, a spot counted each time it is used.</summary>
    public Area GroundPerSeason { get; }

    /// <summary>Land that gives every spot its rest: the most ground used within any span of the rest and the day before it.</summary>
    public Area Land { get; }

    /// <summary>Birds that a hectare of that land carries in the season.</summary>
    public BirdDensity BirdsOnLand => BirdDensity.Of((double)Batches * Batch.Birds, Land);

    /// <summary>How often a spot is used in the season, on the average.</summary>
    public double PassesPerYear => GroundPerSeason.SquareMeters / Land.SquareMeters;

    /// <summary>Plans a season.</summary>
    /// <param name="batch">One batch.</param>
    /// <param name="batches">1 to 400, each in the same shelters or in others like them.</param>
    /// <param name="interval">From one batch moving out to the next, 0 to 366 d, rounded down to days; shorter than a batch where shelters run side by side.</param>
    /// <param name="rest">How long every spot rests before birds come back to it, 0 to 3660 d, rounded up to days; a year and more means new ground for every batch.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static PastureSeason Of(PasturePlan batch, int batches, Duration interval, Duration rest)
    {
        ArgumentNullException.ThrowIfNull(batch);
        Require.AtLeast(batches, 1);
        Require.Between(batches, 1, 400, "batches");
        Require.Between(interval.Days, 0, 366, "d", nameof(interval));
        Require.Between(rest.Days, 0, 3660, "d", nameof(rest));
        return new(batch, batches, (int)Math.Floor(interval.Days + 1e-9), rest);
    }

    /// <summary>What a season leaves on the land, with every spot used alike.</summary>
    /// <param name="perBird">Nitrogen, or phosphorus, that one bird excretes on pasture, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public AreaDensity LoadPerYear(Mass perBird) =>
        AreaDensity.FromKilogramsPerSquareMeter(Require.NotNegative(perBird.Kilograms, "kg", nameof(perBird)) * BirdsOnLand.BirdsPerSquareMeter);

    /// <summary>Paddocks of a house that stays for a while on each: ceil(rest/stay) rest while one is in use.</summary>
    /// <param name="stay">How long the house stands on a paddock, above 0.</param>
    /// <param name="rest">How long a paddock rests, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static int Paddocks(Duration stay, Duration rest) =>
        1 + (int)Math.Ceiling((Require.NotNegative(rest.Days, "d", nameof(rest)) / Require.Positive(stay.Days, "d", nameof(stay))) - 1e-9);

    /// <summary>As in <c>3 batches, 60 d of rest: 1800 m2 (19375 ft2) of land</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{CountText.Batches(Batches)}, {Rest.Days:0.#} d of rest: {Land.SquareMeters:0} m2 ({Land.SquareFeet:0} ft2) of land");

    private static double MostGroundWithin(PasturePlan batch, int batches, int intervalDays, int restDays)
    {
        int batchDays = (int)Math.Ceiling(batch.Time.Days - 1e-9);
        double[] use = new double[((batches - 1) * intervalDays) + batchDays];
        for (int started = 0; started < batches; started++)
        {
            int before = 0;
            for (int day = 0; day < batchDays; day++)
            {
                Age until = Age.FromDays(Math.Min(batch.From.Days + day + 1, batch.To.Days));
                int positions = batch.Moves.Positions(batch.From, until);
                use[(started * intervalDays) + day] += (positions - before) * batch.Shelters * batch.Shelter.SquareMeters;
                before = positions;
            }
        }

        // A shelter moved every few days stands on its spot until the next move: the spot's rest begins then.
        int standing = (int)Math.Ceiling((1 / batch.Moves.MovesPerDay(batch.From)) - 1e-9);
        int window = restDays + Math.Max(standing, 1);
        (double most, double sum) = (0, 0);
        for (int day = 0; day < use.Length; day++)
        {
            sum += use[day] - (day >= window ? use[day - window] : 0);
            most = Math.Max(most, sum);
        }

        return most;
    }
}
