using System.CommandLine;
using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A floor, its birds, and the limits to hold to.</summary>
internal sealed class SpaceOptions
{
    private static readonly Age UsualAge = Age.FromDays(56);

    private readonly Option<string?> area = new("--area") { HelpName = "120ft2", Description = "Littered floor, or ground of the shelter, that the birds can reach at all times.", Required = true };

    private readonly Option<string?> birds = new("--birds") { HelpName = "80", Description = "Birds placed in it: the size of the flock decides which rules apply." };

    private readonly Option<string?> weight = new("--weight") { HelpName = "5lb", Description = "Mean live weight when they leave. Without it, that of the projection at --age." };

    private readonly Option<string?> age = new("--age") { HelpName = "56d", Description = "Age when they leave. [default: 56d where birds are projected]" };

    private readonly Option<string?> limit = new("--limit") { HelpName = "6lb/ft2", Description = "Your own limit on live weight." };

    private readonly Option<string?> floorPerBird = new("--floor-per-bird") { HelpName = "1.5ft2", Description = "Your own limit on the floor of each bird." };

    private readonly Option<string?> mortality = new("--mortality") { HelpName = "5%", Description = "Share of the chicks lost by then in the usual batch." };

    private readonly Option<string?> risk = new("--risk") { HelpName = "5%", Description = "The chance of too many birds to live with. [default: 5%]" };

    private readonly Option<string[]> earlier = new("--earlier")
    {
        HelpName = "36kg/m2", Description = "Highest densities of the two batches before, given twice, for limits on the mean of three.",
    };

    private readonly Option<string?> run = new("--outdoor-area") { HelpName = "800m2", Description = "Outdoor run of all birds together." };

    private readonly Option<string?> popHoles = new("--pop-holes") { HelpName = "4m", Description = "Openings to the run, their lengths added up." };

    private readonly ShippedPriorOptions prior;
    private readonly KeepingOptions keeping;

    private SpaceOptions(Command command)
    {
        command.Add(area);
        command.Add(birds);
        command.Add(weight);
        command.Add(age);
        command.Add(limit);
        command.Add(floorPerBird);
        command.Add(mortality);
        command.Add(risk);
        command.Add(earlier);
        command.Add(run);
        command.Add(popHoles);
        prior = ShippedPriorOptions.AddTo(command);
        keeping = KeepingOptions.AddTo(command);
    }

    public static SpaceOptions AddTo(Command command) => new(command);

    /// <summary>The question; null where something is wrong.</summary>
    /// <param name="words">The command line.</param>
    /// <param name="reading">The weigh-ins; null where there are none, or they could not be read.</param>
    /// <param name="hasFile">Whether a file was named.</param>
    /// <param name="calendar">Null where the file that should say could not be read.</param>
    public SpaceQuestion? Read(OptionWords words, WeighInReading? reading, bool hasFile, BatchCalendar? calendar)
    {
        WeighInSeries? series = reading?.Series;
        bool grows = hasFile || prior.IsGiven(words);
        GrowthPrior known = prior.Read(words);
        Area? floor = words.Area(area);
        Age? leave = words.Age(age) ?? (grows ? UsualAge : null);
        Age placed = calendar?.AgeAtPlacement ?? Age.Hatch;
        if (leave > WhenOptions.Oldest || leave <= placed)
        {
            words.Refuse(age.Name + ": is out of range; expected an age after placement and up to " + WhenOptions.Oldest);
        }

        Mass? given = words.Weight(weight);
        if (given is null && !grows && words.Text(weight) is null)
        {
            words.Refuse(weight.Name + ": is missing; expected a weight, a FILE of weigh-ins, or --prior");
        }

        (Keeping kept, IReadOnlyList<Limit> limits) = keeping.Read(words);
        IReadOnlyList<Limit> own = [.. OwnLimits(words)];
        int? placedBirds = words.Birds(birds);
        double? lost = words.Percent(mortality, 0, 90);
        Probability chance = Probability.FromFraction(words.Percent(risk, 0, 99) ?? 0.05);
        (StockingDensity, StockingDensity)? before = Earlier(words);
        Area? outdoors = words.Area(run);
        Length? openings = words.Length(popHoles);
        if (OtherSex.IsWeighed(series, known.Sex, words.Refuse) || words.Problems.Count > 0)
        {
            return null;
        }

        Projection? projection = !grows ? null : series is null ? Projection.Of(known) : Projection.Of(series, known);
        if (projection is not null && ProjectionEnd.Of(projection) is var end && end < leave)
        {
            words.Refuse(age.Name + ": lies beyond the projection, which ends at " + end + "; expected an age up to that");
            return null;
        }

        return new()
        {
            Floor = floor!.Value,
            Birds = placedBirds,
            Weight = given ?? projection!.MeanAt(leave!.Value).Value,
            Age = leave,
            AgeAtPlacement = placed,
            Mortality = lost is { } share ? Probability.FromFraction(share) : null,
            Risk = chance,
            Run = outdoors,
            PopHoles = openings,
            Keeping = new() { Place = kept.Place, System = kept.System, House = kept.House, Meets = kept.Meets, Chosen = [.. kept.Chosen, .. own.Select(one => one.Instrument.Name)] },
            Limits = [.. own, .. limits],
            EarlierBatches = before,
            Curve = projection,
            Suspicions = reading?.Suspicions ?? [],
        };
    }

    private IEnumerable<Limit> OwnLimits(OptionWords words)
    {
        if (words.FloorLoad(limit) is { } most)
        {
            yield return Own(limit.Name, LimitSubject.StockingDensity, LimitComparison.AtMost, most.KilogramsPerSquareMeter, words.Text(limit)!);
        }

        if (words.Area(floorPerBird) is { } least)
        {
            yield return Own(floorPerBird.Name, LimitSubject.FloorAreaPerBird, LimitComparison.AtLeast, least.SquareMeters, words.Text(floorPerBird)! + "/bird");
        }
    }

    private static Limit Own(string option, LimitSubject subject, LimitComparison comparison, double value, string printed) => new()
    {
        Instrument = new("general", "your own limit (" + option + ")", "as given", InstrumentKind.Scheme),
        Scope = "",
        Quantity = subject == LimitSubject.StockingDensity ? "stocking density" : "floor of each bird",
        Printed = printed,
        Comparison = comparison,
        Subject = subject,
        Value = value,
        HowKnown = HowKnown.Assumption,
    };

    private (StockingDensity, StockingDensity)? Earlier(OptionWords words)
    {
        List<StockingDensity> read = [];
        foreach (string text in words.Texts(earlier).SelectMany(text => text.Split(',')))
        {
            if (QuantityText.TryFloorLoad(text, out StockingDensity density, out string? problem))
            {
                read.Add(density);
            }
            else
            {
                words.Refuse(earlier.Name + ": " + problem);
            }
        }

        if (read.Count is not (0 or 2) && words.Problems.Count == 0)
        {
            words.Refuse(earlier.Name + ": is given another number of times than twice; expected the two batches before");
        }

        return read.Count == 2 ? (read[0], read[1]) : null;
    }
}
