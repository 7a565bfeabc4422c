namespace Poultry.Growth.Planning;

/// <summary>What the batches chosen so far use of each limit, day by day.</summary>
internal sealed class SeasonUse
{
    private readonly SeasonLimits limits;
    private readonly DateOnly first;
    private readonly int[] brooder;
    private readonly int[] shelters;
    private readonly double[] hours;
    private readonly int[] head;
    private double squareMeters;

    public SeasonUse(SeasonLimits limits, IReadOnlyList<SeasonBatch> batches)
    {
        this.limits = limits;
        first = batches.Min(batch => batch.Options.Min(option => option.Placed));
        int days = batches.Max(batch => batch.Options.Max(Free)).DayNumber - first.DayNumber + 1;
        (brooder, shelters, hours, head) = (new int[days], new int[days], new double[days], new int[days]);
    }

    /// <summary>Takes an option into the season (sign 1) or out of it again (sign -1).</summary>
    public void Add(SeasonOption option, int sign)
    {
        Raise(brooder, option.Placed, option.MovedOut, sign * option.Needs.BrooderPlaces);
        Raise(shelters, option.MovedOut, Free(option), sign * option.Needs.Shelters);
        for (int day = Day(option.Placed); day <= Day(option.Killed); day++)
        {
            hours[day] += sign * option.Needs.LabourADay.Hours;
        }

        head[Day(option.Killed)] += sign * option.Needs.Head;
        squareMeters += sign * option.Needs.Ground.SquareMeters;
    }

    /// <summary>Whether an option fits beside those taken.</summary>
    public bool Fits(SeasonOption option) =>
        Below(brooder, option.Placed, option.MovedOut, limits.BrooderPlaces - option.Needs.BrooderPlaces)
        && Below(shelters, option.MovedOut, Free(option), limits.Shelters - option.Needs.Shelters)
        && (limits.Ground is not { } ground || squareMeters + option.Needs.Ground.SquareMeters <= ground.SquareMeters * Rounding)
        && (limits.LabourADay is not { } work
            || Enumerable.Range(Day(option.Placed), option.Killed.DayNumber - option.Placed.DayNumber + 1).All(day => hours[day] + option.Needs.LabourADay.Hours <= work.Hours * Rounding))
        && (!limits.HeadByDay.TryGetValue(option.Killed, out int most) || head[Day(option.Killed)] + option.Needs.Head <= most);

    /// <summary>From when to when most of a limit is used.</summary>
    public (DateOnly From, DateOnly To) Fullest(SeasonLimitKind kind, DateOnly? day)
    {
        double[] use = kind switch
        {
            SeasonLimitKind.BrooderPlaces => Array.ConvertAll(brooder, birds => (double)birds),
            SeasonLimitKind.Shelters => Array.ConvertAll(shelters, count => (double)count),
            SeasonLimitKind.Labour => hours,
            _ => [],
        };
        if (use.Length == 0)
        {
            return day is { } one ? (one, one) : (first, first.AddDays(brooder.Length - 1));
        }

        double most = use.Max();
        return (first.AddDays(Array.FindIndex(use, value => value >= most - 1e-9)), first.AddDays(Array.FindLastIndex(use, value => value >= most - 1e-9)));
    }

    /// <summary>The batches that would have to go so that another could be raised in its own way: each of which, left out, makes room; all, where no single one does.</summary>
    public static IEnumerable<string> InTheWay(
        SeasonLimits limits, IReadOnlyList<SeasonBatch> batches, SeasonOption wanted, IReadOnlyList<(string Name, SeasonOption Option)> others)
    {
        if (Fit(others) || !Fit([]))
        {
            return [];
        }

        string[] single = [.. others.Where(left => Fit([.. others.Where(other => other != left)])).Select(left => left.Name)];
        return single.Length > 0 ? single : others.Where(other => !Fit([other])).Select(other => other.Name);

        bool Fit(IReadOnlyList<(string Name, SeasonOption Option)> beside)
        {
            SeasonUse use = new(limits, batches);
            foreach ((_, SeasonOption option) in beside)
            {
                use.Add(option, 1);
            }

            return use.Fits(wanted);
        }
    }

    /// <summary>Sums of hours and areas that equal a limit may lie above it by their rounding.</summary>
    private const double Rounding = 1 + 1e-12;

    /// <summary>The day on which its shelters are free again.</summary>
    private DateOnly Free(SeasonOption option) => option.Killed.AddDays((int)Math.Ceiling(limits.ShelterRest.Days));

    private int Day(DateOnly date) => date.DayNumber - first.DayNumber;

    private void Raise(int[] use, DateOnly from, DateOnly until, int by)
    {
        for (int day = Day(from); day < Day(until); day++)
        {
            use[day] += by;
        }
    }

    private bool Below(int[] use, DateOnly from, DateOnly until, int? most)
    {
        for (int day = Day(from); most is not null && day < Day(until); day++)
        {
            if (use[day] > most)
            {
                return false;
            }
        }

        return true;
    }
}
