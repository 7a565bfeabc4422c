using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Files;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Shelters, birds, feed, and the rest of the land.</summary>
internal sealed class PastureOptions
{
    private readonly Option<string?> birds = new("--birds") { HelpName = "240", Description = "Birds in all shelters together; count no deaths to be safe.", Required = true };

    private readonly Option<string?> shelter = new("--shelter-area") { HelpName = "120ft2", Description = "Ground under one shelter.", Required = true };

    private readonly Option<string?> shelters = new("--shelters") { HelpName = "3", Description = "Shelters side by side. [default: 1]" };

    private readonly Option<string?> moves = new("--moves") { HelpName = "1,2@42d", Description = "Moves a day to fresh ground, and from an age on; 0.25 is a move every four days.", Required = true };

    private readonly Option<string?> days = new("--days") { HelpName = "35d", Description = "Time on pasture.", Required = true };

    private readonly Option<string?> movedOut = new("--moved-out") { HelpName = "21d", Description = "Age when they move out. [default: 21d]" };

    private readonly Option<string?> feed = new("--feed") { HelpName = "4.6kg", Description = "Feed that a bird eats on pasture." };

    private readonly Option<string?> protein = new("--protein") { HelpName = "19%", Description = "Crude protein of that feed." };

    private readonly Option<string?> live = new("--live") { HelpName = "2.4kg", Description = "Live weight that a bird gains on pasture." };

    private readonly Option<string?> phosphorus = new("--phosphorus") { HelpName = "0.6%", Description = "Total phosphorus of the feed, from its label." };

    private readonly Option<string?> nitrogen = new("--n-per-bird") { HelpName = "55g", Description = "Nitrogen that a bird leaves on pasture, instead of feed, protein and gain." };

    private readonly Option<bool> spreadable = new("--spreadable") { Description = "The nitrogen given is a legal figure for spreading, after losses in house and store: it is no load on pasture." };

    private readonly Option<string?> batches = new("--batches") { HelpName = "3", Description = "Batches in the season. [default: 1]" };

    private readonly Option<string?> interval = new("--interval") { HelpName = "49d", Description = "From one batch moving out to the next. [default: --days]" };

    private readonly Option<string?> rest = new("--rest") { HelpName = "60d", Description = "Rest of every spot before birds come back. [default: 365d, new ground for every batch]" };

    private readonly Option<string?> limit = new("--limit") { HelpName = "170kg/ha", Description = "A limit on nitrogen a year: 170 kg/ha in EU nitrate zones. There is no default." };

    private readonly KeepingOptions keeping;

    private PastureOptions(Command command)
    {
        foreach (Option option in (Option[])[birds, shelter, shelters, moves, days, movedOut, feed, protein, live, phosphorus, nitrogen, spreadable, batches, interval, rest, limit])
        {
            command.Add(option);
        }

        keeping = KeepingOptions.AddTo(command);
    }

    public static PastureOptions AddTo(Command command) => new(command);

    /// <summary>The answer; null, and problems, where words are wrong.</summary>
    public PastureAnswer? Read(OptionWords words)
    {
        int? flock = words.Birds(birds);
        int side = words.Count(shelters, "shelters") ?? 1;
        Area? ground = words.Area(shelter);
        MoveSchedule? schedule = Schedule(words);
        Age from = words.Age(movedOut) ?? Age.FromDays(21);
        Duration? time = Within(words, words.Duration(days), days, 1, 365);
        (NitrogenPerBird? Left, Mass? Phosphorus) load = Load(words);
        int count = words.Count(batches, "batches") ?? 1;
        Duration? between = Within(words, words.Duration(interval), interval, 0, 366);
        Duration? resting = Within(words, words.Duration(rest), rest, 0, 3650);
        AreaDensity? ceiling = words.FieldLoad(limit);
        if (count > 400)
        {
            words.Refuse(batches.Name + ": is out of range; expected 1 to 400");
        }

        if (ceiling is { KilogramsPerSquareMeter: <= 0 })
        {
            words.Refuse(limit.Name + ": is out of range; expected a load above 0");
        }

        (Keeping kept, IReadOnlyList<Limit> limits) = keeping.Read(words);
        if (words.Problems.Count > 0)
        {
            return null;
        }

        PasturePlan plan = PasturePlan.Of(ground!.Value, side, flock!.Value, schedule!, from, from + time!.Value);
        PastureSeason season = PastureSeason.Of(plan, count, between ?? time.Value, resting ?? Duration.FromDays(365));
        return new(plan, season, load.Left, load.Phosphorus, ceiling, Sheltered(kept), limits);
    }

    private static Duration? Within(OptionWords words, Duration? time, Option<string?> option, double least, double most)
    {
        if (time is { } given && !(given.Days >= least && given.Days <= most))
        {
            words.Refuse(option.Name + ": \"" + words.Text(option) + "\" is out of range; expected " + Numbers.Whole(least) + " d to " + Numbers.Whole(most) + " d");
        }

        return time;
    }

    /// <summary>Shelters are what this command is about, where nothing else is said.</summary>
    private static Keeping Sheltered(Keeping kept) =>
        new() { Place = kept.Place, System = kept.System ?? RearingSystem.Shelter, House = kept.House, Meets = kept.Meets, Chosen = kept.Chosen };

    /// <summary>1,2@42d: one move a day, and two from 42 d on.</summary>
    private MoveSchedule? Schedule(OptionWords words)
    {
        List<(Age From, double Moves)> stages = [];
        foreach (string part in words.Text(moves)!.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] halves = part.Split('@');
            string? problem = null;
            Age from = Age.Hatch;
            if (halves.Length > 2
                || !double.TryParse(halves[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double perDay) || perDay is not (> 0 and <= 24)
                || (halves.Length == 2 && !QuantityText.TryAge(halves[1], out from, out problem))
                || stages.Any(stage => stage.From == from))
            {
                words.Refuse(moves.Name + ": \"" + part + "\" is no number of moves; expected moves a day above 0 up to 24, and from the second on @ and the age, as in 1,2@42d" + (problem is null ? "" : " (" + problem + ")"));
                return null;
            }

            stages.Add((from, perDay));
        }

        return MoveSchedule.ByAge(stages);
    }

    private (NitrogenPerBird? Left, Mass? Phosphorus) Load(OptionWords words)
    {
        Mass? eaten = words.Weight(feed), gained = words.Weight(live), given = words.Weight(nitrogen);
        double? share = words.Percent(protein, 1, 60), mineral = words.Percent(phosphorus, 0.01, 5);
        int parts = new[] { feed, protein, live }.Count(option => words.Text(option) is not null);
        if (words.Text(nitrogen) is not null && (parts > 0 || mineral is not null))
        {
            words.Refuse(nitrogen.Name + ": stands instead of --feed, --protein, --live and --phosphorus; expected one or the other");
        }
        else if (parts is 1 or 2)
        {
            words.Refuse("--feed, --protein and --live: make one balance; expected all three");
        }
        else if (words.Given(spreadable) && words.Text(nitrogen) is null)
        {
            words.Refuse(spreadable.Name + ": says what --n-per-bird is; expected that too");
        }

        if (words.Text(phosphorus) is not null && words.Text(feed) is null)
        {
            words.Refuse(phosphorus.Name + ": is a share of the feed; expected --feed too");
        }

        if (given is { } known)
        {
            return (new(known, null, words.Given(spreadable)), null);
        }

        if (eaten is not { } food || share is not { } crude || gained is not { } gain)
        {
            return default;
        }

        if (!NitrogenBalance.TryOf(food, Probability.FromFraction(crude), gain, out NitrogenBalance? balance, out string? fault))
        {
            words.Refuse(live.Name + ": " + fault);
            return default;
        }

        return (new(balance.Excreted, balance, IsSpreadable: false), mineral is { } part ? FeedNutrients.PhosphorusExcreted(food, Probability.FromFraction(part)) : null);
    }
}
