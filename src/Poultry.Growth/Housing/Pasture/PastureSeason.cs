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
        Land = Area.FromSquareMeters(MostGroundTaken(batch, batches, intervalDays, (int)Math.Ceiling(rest.Days - 1e-9)));
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

    /// <summary>Land that gives every spot its rest: the most ground that is under birds or at rest on any day.</summary>
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
        1 + (int)Math.Min(int.MaxValue - 1, Math.Ceiling((Require.NotNegative(rest.Days, "d", nameof(rest)) / Require.Positive(stay.Days, "d", nameof(stay))) - 1e-9));

    /// <summary>As in <c>3 batches, 60 d of rest: 1800 m2 (19375 ft2) of land</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{CountText.Batches(Batches)}, {Rest.Days:0.#} d of rest: {Land.SquareMeters:0} m2 ({Land.SquareFeet:0} ft2) of land");

    private static double MostGroundTaken(PasturePlan batch, int batches, int intervalDays, int restDays)
    {
        int batchDays = (int)Math.Ceiling(batch.Time.Days - 1e-9), before = 0;

        // Ground taken on each day, less that of the day before: a spot is taken from its first day under the shelter to the end of its rest.
        double[] more = new double[((batches - 1) * intervalDays) + batchDays];
        for (int day = 0; day < batchDays; day++)
        {
            Age age = Age.FromDays(batch.From.Days + day);
            int positions = batch.Moves.Positions(batch.From, Age.FromDays(Math.Min(age.Days + 1, batch.To.Days)));
            double ground = (positions - before) * batch.Shelters * batch.Shelter.SquareMeters;
            before = positions;

            // A shelter moved every few days stands on its spot until the next move, or until the birds are gone: the spot's rest begins then.
            double free = day + restDays + Math.Min(batchDays - day, Math.Max(1, Math.Ceiling((1 / batch.Moves.MovesPerDay(age)) - 1e-9)));
            for (int start = 0, left = batches; left > 0; start += intervalDays, left--)
            {
                more[start + day] += ground;
                if (start + free < more.Length)
                {
                    more[start + (int)free] -= ground;
                }
            }
        }

        (double most, double taken) = (0, 0);
        foreach (double change in more)
        {
            taken += change;
            most = Math.Max(most, taken);
        }

        return most;
    }
}
