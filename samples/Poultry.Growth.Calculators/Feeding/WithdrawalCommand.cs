using System.CommandLine;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary><c>withdrawal</c>: live weight lost off feed and on the road.</summary>
internal static class WithdrawalCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new("withdrawal", "Live weight lost between the last feed and killing, and how long a carcass stands it.", "--weight 2.6kg --off-feed 12h --road 2h");
        Option<string?> weight = new("--weight") { HelpName = "2.6kg", Description = "Live weight when feed is removed.", Required = true };
        Option<string?> offFeed = new("--off-feed") { HelpName = "12h", Description = "From feed removed to killing, road and waiting included.", Required = true };
        Option<string?> road = new("--road") { HelpName = "2h", Description = "The part of it on the road. [default: 0h]" };
        command.Add(weight);
        command.Add(offFeed);
        command.Add(road);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            Mass? live = words.Weight(weight);
            Duration? off = words.Duration(offFeed);
            Duration? onRoad = words.Duration(road);
            if (off is { } hours && hours.Hours > 48)
            {
                words.Refuse(offFeed.Name + ": is out of range; expected 48h or less");
            }
            else if (off is not null && onRoad > off)
            {
                words.Refuse(road.Name + ": is longer than the time off feed; expected the part of it on the road");
            }

            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(new WithdrawalAnswer(live!.Value, off!.Value, onRoad ?? Duration.Zero), common, output, errors);
        });
        return command;
    }

    private static int Print(WithdrawalAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) =>
        common.Answer(() => WithdrawalDocument.Of(answer).ToJson(), page => WithdrawalPage.Print(answer, page), output, errors);
}
