using System.Globalization;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>How often a shelter is moved to fresh ground, by the birds' age.</summary>
public sealed class MoveSchedule
{
    private readonly double[] fromDays;
    private readonly double[] moves;

    private MoveSchedule(double[] fromDays, double[] moves) => (this.fromDays, this.moves) = (fromDays, moves);

    /// <summary>So many moves a day at every age; 0.25 is a move every four days.</summary>
    /// <param name="movesPerDay">Above 0, at most 24.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static MoveSchedule Steady(double movesPerDay) => ByAge((Age.Hatch, movesPerDay));

    /// <summary>Moves a day from an age on.</summary>
    /// <param name="movesPerDay">Ages and moves, one or more, in any order, no age twice; the youngest holds for younger birds too.</param>
    /// <exception cref="ArgumentException">No stage is given, or an age stands twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Moves are not above 0, or more than 24.</exception>
    public static MoveSchedule ByAge(params IReadOnlyList<(Age From, double MovesPerDay)> movesPerDay)
    {
        (Age From, double MovesPerDay)[] byAge = [.. Require.Some(movesPerDay).OrderBy(stage => stage.From)];
        foreach ((Age _, double perDay) in byAge)
        {
            Require.Positive(perDay, "moves/d", nameof(movesPerDay));
            Require.Between(perDay, 0, 24, "moves/d", nameof(movesPerDay));
        }

        return byAge.DistinctBy(stage => stage.From).Count() == byAge.Length
            ? new([.. byAge.Select(stage => stage.From.Days)], [.. byAge.Select(stage => stage.MovesPerDay)])
            : throw new ArgumentException("An age stands twice; expected each once.", nameof(movesPerDay));
    }

    /// <summary>Moves a day at an age.</summary>
    /// <param name="age">Any; younger than the first stage, that of the first.</param>
    public double MovesPerDay(Age age)
    {
        int at = Array.FindLastIndex(fromDays, from => from <= age.Days);
        return moves[Math.Max(at, 0)];
    }

    /// <summary>As in <c>1 from 0 d, 2 from 35 d: moves a day</c>, in every culture.</summary>
    public override string ToString() => string.Join(", ", fromDays.Zip(
        moves, (from, perDay) => string.Create(CultureInfo.InvariantCulture, $"{perDay:0.##} from {from:0.#} d"))) + ": moves a day";

    /// <summary>Positions on fresh ground between two ages, the last one counted in full.</summary>
    /// <param name="from">The earlier age.</param>
    /// <param name="to">The later age.</param>
    /// <exception cref="ArgumentOutOfRangeException">The later age is the earlier.</exception>
    public int Positions(Age from, Age to)
    {
        Require.Between(to.Days, from.Days, double.MaxValue, "d", nameof(to));
        double positions = 0;
        for (int i = 0; i < moves.Length; i++)
        {
            double begin = i == 0 ? from.Days : Math.Max(from.Days, fromDays[i]);
            double end = i == moves.Length - 1 ? to.Days : Math.Min(to.Days, fromDays[i + 1]);
            positions += Math.Max(0, end - begin) * moves[i];
        }

        // 28 d at 1/7 a day are 4 positions and not a rounding more.
        return Math.Max((int)Math.Ceiling(positions - 1e-9), to > from ? 1 : 0);
    }
}
