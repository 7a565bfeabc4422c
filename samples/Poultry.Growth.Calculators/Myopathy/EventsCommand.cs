using System.CommandLine;
using System.Globalization;
using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary><c>myopathy events</c>: what disturbances did, and what if one had not happened or on another day.</summary>
internal static class EventsCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "events",
            "What disturbances did to the tenders: dates, and a rate where share and cycles are guessed.",
            "--sex mixed --kill-age 56d --event age=45d,cycles=10/15/20,share=5%/10%/20%,what=dog --event age=50d,what=storm",
            MyopathyCommand.Name);
        Option<string?> killAge = LesionWords.KillAge(), sex = LesionWords.Sex();
        Option<bool> indoor = LesionWords.Indoor();
        Option<string[]> events = new("--event")
        {
            HelpName = "age=45d,cycles=20,share=10%,what=dog", Description = "A disturbance; repeatable. cycles (bouts of 4 to 6 flaps) and share are your guess, one value or low/likely/high, or left out.",
        };
        Option<string?> log = new("--log") { HelpName = "FILE", Description = "A log of disturbances, see docs/file-formats.md." };
        Option<string?> hatched = new("--hatched") { HelpName = "2027-04-11", Description = "Day of hatch, for a log by dates; wins over the file." };
        Option<string?> without = new("--without") { HelpName = "1", Description = "What if disturbance 1, in order of age, had not happened?" };
        Option<string[]> move = new("--move") { HelpName = "1=40d", Description = "What if disturbance 1 had happened at 40 d? Repeatable." };
        foreach (Option option in (Option[])[killAge, sex, indoor, events, log, hatched, without, move])
        {
            command.Add(option);
        }

        CommonOptions common = CommonOptions.AddTo(command, intervals: true, chart: false);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            Age killed = words.ReadAge(killAge);
            Sex birds = words.Sex(sex);
            DisturbanceLog? asked = Log(words, events, words.Text(log), words.Date(hatched), killed);
            if (asked is not null)
            {
                asked = WhatIf(words, asked, without, move, killed);
            }

            return words.Problems.Count > 0
                ? Exit.Refuse(errors, words.Problems)
                : Print(EventsAnswer.To(asked!, killed, birds, !words.Given(indoor), common.Level), common, output, errors);
        });
        return command;
    }

    private static DisturbanceLog? Log(OptionWords words, Option<string[]> events, string? file, DateOnly? hatched, Age killed)
    {
        List<Disturbance> typed = [];
        foreach (string text in words.Texts(events))
        {
            if (EventWords.Read(text, out string? problem) is { } disturbance)
            {
                typed.Add(disturbance);
            }
            else
            {
                words.Refuse(events.Name + ": " + problem);
            }
        }

        if (file is null && typed.Count == 0 && words.Texts(events).Count == 0)
        {
            words.Refuse(events.Name + ": nothing is given; expected at least one " + events.Name + ", or --log FILE");
        }

        DisturbanceLog ofWords = DisturbanceLog.Of(typed);
        bool within = LesionWords.Within(words, ofWords, events.Name, killed);
        DisturbanceLog? read = file is null ? ofWords : words.ReadLog(file, hatched, killed);
        return within && read is not null ? file is null ? ofWords : DisturbanceLog.Of(read.Concat(typed)) : null;
    }

    private static DisturbanceLog WhatIf(OptionWords words, DisturbanceLog log, Option<string?> without, Option<string[]> move, Age killed)
    {
        DisturbanceLog changed = log;
        foreach (string text in words.Texts(move))
        {
            string[] parts = text.Split('=');
            string? problem = null;
            if (parts.Length != 2 || Index(parts[0], log.Count) is not { } index)
            {
                words.Refuse(move.Name + ": \"" + text + "\" is no move; expected a number from 1 to " + Numbers.Whole(log.Count) + " and an age, as in 1=40d");
            }
            else if (!QuantityText.TryAge(parts[1], out Age age, out problem) || age > killed)
            {
                words.Refuse(move.Name + ": " + (problem ?? "\"" + text + "\" lies after killing; expected an age up to " + killed));
            }
            else if (!changed.Contains(log[index]))
            {
                words.Refuse(move.Name + ": \"" + text + "\" moves a disturbance a second time; expected each once");
            }
            else
            {
                // By the place of the log as given: a move may change the order.
                changed = changed.Moved(changed.ToList().IndexOf(log[index]), age);
            }
        }

        if (words.Text(without) is { } number)
        {
            if (Index(number, log.Count) is { } index && changed.Contains(log[index]))
            {
                return changed.Without(changed.ToList().IndexOf(log[index]));
            }

            words.Refuse(without.Name + ": \"" + number + "\" is no disturbance; expected a number from 1 to " + Numbers.Whole(log.Count) + " that is not moved too");
        }

        return changed;
    }

    private static int? Index(string text, int count) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= count ? number - 1 : null;

    private static int Print(EventsAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        () => EventsDocument.Of(answer).ToJson(),
        page => EventsPage.Print(answer, page),
        output,
        errors);
}
