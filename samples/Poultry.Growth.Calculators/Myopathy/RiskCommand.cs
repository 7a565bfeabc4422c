using System.CommandLine;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy risk</c>: the share of birds with lesions that a batch may have, before anyone looked.</summary>
internal static class RiskCommand
{
    /// <summary>What to type after <c>myopathy</c>, for whoever asks its help.</summary>
    public const string Example = Name + " " + Words;

    private const string Name = "risk";
    private const string Words = "--birds 300 --kill-age 56d --live 2.6kg --deboned 40%";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            Name, "What share of the birds of a batch may have lesions, and what that costs.", Words, MyopathyCommand.Name);
        Option<string?> birds = new("--birds") { HelpName = "300", Description = "Birds of the batch.", Required = true };
        Option<string?> killAge = LesionWords.KillAge(), sex = LesionWords.Sex(), farm = LesionWords.Farm();
        Option<bool> indoor = LesionWords.Indoor();
        Option<string?> live = new("--live") { HelpName = "2.6kg", Description = "Mean live weight; it moves no risk, it says what a tender weighs." };
        Option<string?> strain = new("--strain") { HelpName = "average|high|low", Description = "How prone the strain is, by one survey of two crosses. [default: average]" };
        Option<bool> thinned = new("--thinned") { Description = "Part of the flock is caught 3 to 10 days before: odds 2, an assumption." };
        Option<string?> lame = new("--lame") { HelpName = "3%", Description = "Severely lame birds (gait score 4 or 5): odds 1.5 of each, an assumption." };
        Option<string?> deboned = new("--deboned")
        {
            HelpName = "40%", Description = "Share of the birds that the plant debones; alone it means all. [default: none, all are sold on the bone]", Arity = ArgumentArity.ZeroOrOne,
        };
        Option<string?> tenders = new("--tenders") { HelpName = "104g", Description = "Both tenders of a bird, as your cuts say. [default: 4 % of the live weight]" };
        Option<bool> contained = new("--trim-contains-lesions") { Description = "Your packed ratio or trim figure holds lesions already: nothing is taken off again." };
        Option<string?> refund = new("--refund") { HelpName = "12", Description = "What a customer gets who finds a lesion, in your currency." };
        Option<bool> ranges = new("--ranges") { Description = "With the ranges of all figures of the model within the intervals." };
        Option<string?> change = new("--change-odds") { HelpName = "0.5", Description = "A change that is hoped to multiply the odds so: what is it worth, when would it show?" };
        Option<string?> factor = new("--factor") { HelpName = "NAME", Description = "Explain one risk factor: what speaks for it and against it." };
        foreach (Option option in (Option[])[birds, killAge, sex, indoor, live, strain, thinned, lame, farm, ranges, deboned, tenders, contained, refund, change, factor])
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            RiskQuestion question = new()
            {
                Birds = words.Birds(birds) ?? 1,
                Farm = words.ReadFarm(words.Text(farm)),
                Batch = new()
                {
                    KillAge = words.ReadAge(killAge),
                    Sex = words.Sex(sex),
                    IsOutdoor = !words.Given(indoor),
                    LiveWeight = words.Weight(live, 10, 20_000, "10g to 20kg"),
                    Strain = words.Choice(strain, ("average", StrainRisk.Average), ("high", StrainRisk.High), ("low", StrainRisk.Low)),
                    IsThinned = words.Given(thinned),
                    SeverelyLame = Probability.FromFraction(words.Percent(lame, 0, 100) ?? 0),
                },
                Deboned = words.Stands(deboned) && words.Text(deboned) is null ? 1 : words.Percent(deboned, 0, 100) ?? 0,
                Tenders = words.Weight(tenders),
                Record = words.Given(contained) ? TrimRecord.ContainsLesions : TrimRecord.SoundBirds,
                Refund = words.Money(refund) ?? Money.Zero,
                WithRanges = words.Given(ranges),
                ChangeOdds = words.Number(change, 0.01, 100, "an odds ratio from 0.01 to 100, as in 0.5"),
                Factor = Factor(words, factor),
            };
            return words.Problems.Count > 0 ? Exit.Refuse(errors, words.Problems) : Print(RiskAnswer.To(question, common.Level), common, output, errors);
        });
        return command;
    }

    private static RiskFactor? Factor(OptionWords words, Option<string?> option) => words.Text(option) is null
        ? null
        : words.Choice(option, [.. RiskFactors.All.Select(factor => (factor.Code, factor))]);

    private static int Print(RiskAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => LesionChart.Of(answer.Prevalence, answer.Question.Farm is null ? "Risk of a batch" : "Risk of the farm's next batch", answer.Level),
        () => RiskDocument.Of(answer).ToJson(),
        page => RiskPage.Print(answer, page),
        output,
        errors);
}
