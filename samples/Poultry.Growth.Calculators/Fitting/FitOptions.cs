using System.CommandLine;
using Poultry.Growth.Curves;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What to fit and what to ask the fit.</summary>
internal sealed class FitOptions
{
    private readonly Option<string?> family = new("--family")
    {
        HelpName = "NAME", Description = "Kind of curve: " + string.Join(", ", CurveFamilies.All.Select(family => family.Id)) + ". [default: gompertz]",
    };

    private readonly Option<string?> errors = new("--errors")
    {
        HelpName = "NAME",
        Description = "What is assumed about scatter: proportional (to the weight), iterated (the same by weights), equal (in kg), sampling (known beforehand). [default: proportional]",
    };

    private readonly Option<string?> spread = new("--cv") { HelpName = "12%", Description = "Spread between birds, with --errors sampling. [default: from the birds weighed]" };

    private readonly Option<string?> weighInError = new("--weigh-in-error")
    {
        HelpName = "2%", Description = "Error of a whole weigh-in (scale, place, time of day), with --errors sampling. [default: 0%]",
    };

    private readonly Option<string?> hatchWeight = new("--hatch-weight") { HelpName = "42g", Description = "A weight at hatch that the curve must have." };

    private readonly Option<bool> compare = new("--compare") { Description = "Fit every kind of curve and compare what they project." };

    private readonly WhenOptions when;

    private FitOptions(Command command)
    {
        command.Add(family);
        command.Add(errors);
        command.Add(spread);
        command.Add(weighInError);
        command.Add(hatchWeight);
        when = WhenOptions.AddTo(command);
        command.Add(compare);
    }

    public static FitOptions AddTo(Command command) => new(command);

    public FitQuestion Read(OptionWords words, WeighInReading? reading, double level) => new()
    {
        Family = words.Choice(family, [.. CurveFamilies.All.Select(known => (known.Id, known))]),
        Errors = ReadErrors(words),
        HatchWeight = words.Weight(hatchWeight, 20, 80, "20g to 80g"),
        Ages = when.Ages(words, reading is null ? null : BatchCalendar.Of(reading)),
        Target = when.Target(words),
        Compare = words.Given(compare),
        Level = level,
    };

    private ErrorModel ReadErrors(OptionWords words)
    {
        string id = words.Choice(errors, ("proportional", "proportional"), ("iterated", "iterated"), ("equal", "equal"), ("sampling", "sampling"));
        double? cv = words.Percent(spread, 0.1, 99);
        double? error = words.Percent(weighInError, 0, 99);
        if (id != "sampling")
        {
            foreach (Option<string?> stray in (IEnumerable<Option<string?>>)[spread, weighInError])
            {
                if (words.Text(stray) is not null)
                {
                    words.Refuse(stray.Name + ": belongs to --errors sampling; expected that option too");
                }
            }
        }

        return ErrorModel.Find(id, cv, error ?? 0)!;
    }
}
