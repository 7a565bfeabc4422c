using System.CommandLine;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy inspect</c>: how many birds to open, and what a count says.</summary>
internal static class InspectCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "inspect", "How many birds to open to find lesions, and what was found says of the batch.", "--flock 300 --prevalence 2% --confidence 95% --opened 100 --found 3", MyopathyCommand.Name);
        Option<string?> flock = new("--flock") { HelpName = "300", Description = "Birds of the flock. [default: so many that it does not matter]" };
        Option<string?> prevalence = new("--prevalence") { HelpName = "2%", Description = "The share of birds affected that must not be overlooked: how many birds to open?" };
        Option<string?> confidence = new("--confidence") { HelpName = "95%", Description = "The chance of finding one or more. [default: 95%]" };
        Option<string?> detection = new("--detection") { HelpName = "80%", Description = "The chance that an affected bird is seen to be. [default: 100%]" };
        Option<string?> correlation = new("--correlation") { HelpName = "0.01", Description = "How much more alike birds are that are opened together. [default: 0]" };
        Option<string?> opened = new("--opened") { HelpName = "100", Description = "Birds opened at both tenders: what does the count say?" };
        Option<string?> found = new("--found") { HelpName = "3", Description = "Birds of them with a lesion on one side or both." };
        Option<string?> farm = LesionWords.Farm();
        foreach (Option option in (Option[])[flock, prevalence, confidence, detection, correlation, opened, found, farm])
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            InspectQuestion question = new()
            {
                Flock = words.Birds(flock),
                Prevalence = words.Percent(prevalence, 0.0001, 100),
                Confidence = words.Text(confidence)?.Contains('%', StringComparison.Ordinal) == false ? words.Level(confidence) ?? 0.95 : words.Percent(confidence, 50, 99.9) ?? 0.95,
                Detection = words.Percent(detection, 1, 100) ?? 1,
                Correlation = words.Number(correlation, 0, 0.99, "a number from 0 to 0.99, as in 0.01") ?? 0,
                Opened = words.Birds(opened),
                Found = words.Count(found, "birds", least: 0),
                Farm = words.ReadFarm(words.Text(farm)),
            };
            Check(words, question, prevalence, opened, found);
            return words.Problems.Count > 0 ? Exit.Refuse(errors, words.Problems) : Print(InspectAnswer.To(question, common.Level), common, output, errors);
        });
        return command;
    }

    private static void Check(OptionWords words, InspectQuestion question, Option prevalence, Option<string?> opened, Option<string?> found)
    {
        if (words.Text(opened) is null != (words.Text(found) is null))
        {
            words.Refuse(opened.Name + " and " + found.Name + ": stand together; expected both");
        }
        else if (question.Found > question.Opened)
        {
            words.Refuse(found.Name + ": more than were opened; expected at most " + opened.Name);
        }

        if (words.Text(opened) is null && !words.Stands(prevalence))
        {
            words.Refuse(prevalence.Name + ": nothing is asked; expected " + prevalence.Name + ", or " + opened.Name + " and " + found.Name);
        }
    }

    private static int Print(InspectAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        answer.HasAnswer,
        () => LesionChart.Of(answer.Posterior ?? answer.Prior, answer.Posterior is null ? "Before any bird is opened" : "After the inspection", answer.Level),
        () => InspectDocument.Of(answer).ToJson(),
        page => InspectPage.Print(answer, page),
        output,
        errors);
}
