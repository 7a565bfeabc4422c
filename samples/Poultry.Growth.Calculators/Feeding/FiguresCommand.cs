using System.CommandLine;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>figures</c>: the trade's figures of a finished batch, each by its definition.</summary>
internal static class FiguresCommand
{
    /// <summary>No bird is sold so light: a smaller figure is the mean of one bird.</summary>
    private const double LightestSoldKilograms = 0.2;

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "figures",
            "Conversion, livability, daily gain, efficiency factor and index of a finished batch, by stated definitions.",
            "--placed 300 --sold 282 --days 56d --feed 1650kg --live-weight 790kg --chick-weight 42g --dead-weight 14kg --diet 3150kcal/kg");
        Option<string?> placed = new("--placed") { HelpName = "300", Description = "Chicks placed.", Required = true };
        Option<string?> sold = new("--sold") { HelpName = "282", Description = "Birds sold.", Required = true };
        Option<string?> days = new("--days") { HelpName = "56d", Description = "Age at sale.", Required = true };
        Option<string?> feed = new("--feed") { HelpName = "1650kg", Description = "Feed eaten: delivered less what was left.", Required = true };
        Option<string?> liveWeight = new("--live-weight") { HelpName = "790kg", Description = "Live weight of all birds sold together; below 200 g a bird it is taken as the mean of one bird.", Required = true };
        Option<string?> chickWeight = new("--chick-weight") { HelpName = "42g", Description = "Mean weight of one chick placed." };
        Option<string?> deadWeight = new("--dead-weight") { HelpName = "14kg", Description = "Weight of all birds that died or were culled, together." };
        Option<string?> diet = new("--diet") { HelpName = "3150kcal/kg", Description = "Metabolizable energy of the feed, the mean by weight." };
        foreach (Option<string?> option in new[] { placed, sold, days, feed, liveWeight, chickWeight, deadWeight, diet })
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            int? chicks = words.Birds(placed), birds = words.Birds(sold);
            Age? age = words.Age(days);
            Mass? eaten = words.Weight(feed), live = words.Weight(liveWeight), chick = words.Weight(chickWeight), dead = words.Weight(deadWeight);
            SpecificEnergy? energy = words.FeedEnergy(diet);
            if (birds > chicks)
            {
                words.Refuse(sold.Name + ": is more than --placed; expected birds sold of those placed");
            }

            if (age is { Days: 0 })
            {
                words.Refuse(days.Name + ": is 0; expected an age above 0");
            }

            if (birds is { } number && live is { } weight)
            {
                live = weight.Kilograms / number < LightestSoldKilograms ? weight * number : weight;
                if (chick is { } hatched && hatched.Kilograms >= live.Value.Kilograms / number)
                {
                    words.Refuse(chickWeight.Name + ": is not below the mean live weight sold; expected the weight of one chick");
                }
            }

            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(
                    BatchFigures.Of(new FinishedBatch(chicks!.Value, birds!.Value, age!.Value, eaten!.Value, live!.Value) { ChickWeight = chick, DeadWeight = dead, DietEnergy = energy }),
                    common,
                    output,
                    errors);
        });
        return command;
    }

    private static int Print(BatchFigures figures, CommonOptions common, TextWriter output, TextWriter errors) =>
        common.Answer(() => FiguresDocument.Of(figures).ToJson(), page => FiguresPage.Print(figures, page), output, errors);
}
