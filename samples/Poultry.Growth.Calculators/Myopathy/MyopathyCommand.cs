using System.CommandLine;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy</c>: deep pectoral myopathy, five questions.</summary>
internal static class MyopathyCommand
{
    public const string Name = "myopathy";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            Name, "Deep pectoral myopathy (green tenders): risk of a batch, disturbances, dating of lesions, birds to open, the farm's own rate.", RiskCommand.Example)
        {
            RiskCommand.Create(output, errors),
            EventsCommand.Create(output, errors),
            DateCommand.Create(output, errors),
            InspectCommand.Create(output, errors),
            LearnCommand.Create(output, errors),
        };
        command.SetAction(_ => Exit.Refuse(errors, ["myopathy: which question? Expected risk, events, date, inspect or learn.", "See poultry-growth myopathy --help."]));
        return command;
    }
}
