using System.CommandLine;
using Poultry.Growth.Carcass;
using Poultry.Growth.Fitting;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary>The birds that go to the plant, and the state in which they were weighed.</summary>
internal sealed class BirdOptions
{
    /// <summary>Spread between birds of one sex where none is stated (assumption), as a fraction.</summary>
    public const double AssumedVariation = 0.10;

    /// <summary>The age for the weights of cockerels and pullets where none is stated.</summary>
    private static readonly Age EightWeeks = Age.FromDays(56);

    private readonly Option<string?> live = new("--live") { HelpName = "2.9kg", Description = "Mean live weight of a bird.", Required = true };

    private readonly Option<string?> birds = new("--birds") { HelpName = "300", Description = "How many birds go to the plant.", Required = true };

    private readonly Option<string?> state = new("--live-state")
    {
        HelpName = "full-fed|12h", Description = "How they were weighed: full-fed on the farm, or so many hours after their last feed.", Required = true,
    };

    private readonly Option<string?> offFeed = new("--off-feed") { HelpName = "12h", Description = "From the last feed to killing, road and waiting included. [default: as weighed]" };

    private readonly Option<string?> road = new("--road") { HelpName = "3h", Description = "The part of --off-feed on the road: there birds lose more. [default: none]" };

    private readonly Option<string?> shrink = new("--shrink") { HelpName = "0.3%", Description = "Live weight lost in an hour off feed. [default: 0.3%, from 0.2 to 0.4]" };

    private readonly Option<string?> variation = new("--cv") { HelpName = "12%", Description = "Spread between birds of one sex: weigh tells it. [default: 10%, an assumption]" };

    private readonly Option<string?> sex = new("--sex") { HelpName = "mixed|male|female", Description = "The birds; mixed is half cockerels, half pullets. [default: mixed]" };

    private readonly Option<string?> age = new("--age") { HelpName = "56d", Description = "Their age: figures measured at another age are told." };

    private BirdOptions(Command command)
    {
        foreach (Option<string?> option in new[] { live, birds, state, offFeed, road, shrink, variation, sex, age })
        {
            command.Add(option);
        }
    }

    /// <summary>Whether the spread is the assumed one.</summary>
    public bool SpreadIsAssumed { get; private set; }

    public Sex Sex { get; private set; }

    public Age? AgeAtKilling { get; private set; }

    /// <summary>Whether something is said of the hours off feed at killing, right or wrong.</summary>
    public bool KillingIsStated { get; private set; }

    /// <summary>The state at killing; null where it is not stated.</summary>
    public LiveState? AtKilling { get; private set; }

    public LiveState State { get; private set; } = LiveState.FullFed;

    public FeedWithdrawal Withdrawal { get; private set; } = FeedWithdrawal.Usual;

    public static BirdOptions AddTo(Command command) => new(command);

    /// <summary>The birds; null where a word is wrong, and told.</summary>
    public DeliveredBirds? Read(OptionWords words)
    {
        Mass? mean = words.Weight(live);
        int? count = words.Birds(birds);
        double? spread = words.Percent(variation, 0, 30);
        Sex = words.Sex(sex);
        AgeAtKilling = words.Age(age);
        SpreadIsAssumed = spread is null;
        double? rate = words.Percent(shrink, 0, 1);
        Withdrawal = rate is { } perHour ? FeedWithdrawal.Of(LikelyRange<double>.Exactly(100 * perHour)) : FeedWithdrawal.Usual;
        ReadStates(words);
        if (count > 1_000_000)
        {
            words.Refuse(birds.Name + ": is out of range; expected up to 1000000");
        }

        return words.Problems.Count == 0 ? DeliveredBirds.Of(count!.Value, Weights(mean!.Value, spread ?? AssumedVariation), State) : null;
    }

    private void ReadStates(OptionWords words)
    {
        Duration? weighed = words.Text(state) is null or "full-fed" ? Duration.Zero : words.Duration(state);
        Duration? killed = words.Duration(offFeed), onRoad = words.Duration(road);
        KillingIsStated = words.Text(offFeed) is not null;
        foreach ((Option<string?> option, Duration? time) in new[] { (state, weighed), (offFeed, killed) })
        {
            if (time?.Hours > 48)
            {
                words.Refuse(option.Name + ": is out of range; expected up to 48 h");
                return;
            }
        }

        if (weighed is not { } hours || (KillingIsStated && killed is null))
        {
            // What cannot be read is told; held against the rest it would be blamed twice.
            return;
        }

        if (killed < hours)
        {
            words.Refuse(offFeed.Name + ": is less than the hours at weighing; expected the time from the last feed to killing");
        }
        else if (onRoad > (killed ?? hours))
        {
            words.Refuse(road.Name + ": is more than the hours off feed; expected a part of them");
        }
        else
        {
            State = LiveState.OffFeed(hours, killed is null ? onRoad : null);
            AtKilling = killed is { } atKilling ? LiveState.OffFeed(atKilling, onRoad) : null;
        }
    }

    private WeightDistribution Weights(Mass mean, double spread)
    {
        if (Sex != Sex.Mixed)
        {
            return WeightDistribution.Of(mean, spread);
        }

        double ratio = SexDimorphism.FemaleRatioAt(AgeAtKilling ?? EightWeeks);
        Mass male = mean * (2 / (1 + ratio));
        return WeightDistribution.OfSexes(male, male * ratio, Probability.FromFraction(0.5), spread);
    }
}
