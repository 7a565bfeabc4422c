using System.Globalization;
using System.Text;
using Poultry.Growth.Numerics;
using Poultry.Growth.Tests.Properties.Sweep;

namespace Poultry.Growth.Tests.ConsoleRuns;

/// <summary>
/// Batches as they come, made at random: few birds and many, none weighed and every week, weights in the wrong unit, sick birds that lose weight, half of a flock dead, records that make no sense,
/// days early and late, plants that take nobody, nothing that sells. Every file reads well; each command answers, or says in one line or more what is wrong.
/// </summary>
public sealed class OddBatchTests : IDisposable
{
    /// <summary>More on request: DEVELOPERS.md says how.</summary>
    private static readonly int Batches = SweepSettings.Calls / 400;

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Every_command_answers_or_says_what_is_wrong()
    {
        int answered = 0;
        for (int batch = 0; batch < Batches; batch++)
        {
            OddBatch odd = new(batch);
            string file = scratch.Write("batch.json", odd.File);
            scratch.Write("weigh-ins.csv", odd.WeighIns);
            scratch.Write("deaths.csv", odd.Deaths);
            scratch.Write("feed.csv", odd.Feed);
            scratch.Write("prices.csv", odd.Prices);
            scratch.Write("order.csv", odd.Order);
            scratch.Write("plant.csv", odd.Plant);
            foreach (string[] words in (string[][])
            [
                ["plan", file, "--draws", "100", "--every-day", "--split", "any", "--report", scratch.PathOf("plan.html"), "--ics", scratch.PathOf("plan.ics"), "--chart", scratch.PathOf("plan.svg")],
                ["feed", file, "--chart", scratch.PathOf("feed.svg")],
                ["reconcile", file, scratch.PathOf("plant.csv"), "--draws", "100", "--history", scratch.PathOf("history"), "--replace"],
                ["project", scratch.PathOf("weigh-ins.csv"), "--prior", odd.Prior, "--sex", odd.Sex, "--target", "2.5kg", "--bands", "1.8kg,2.6kg", "--next-weigh-in", "30@50d"],
                ["fit", scratch.PathOf("weigh-ins.csv"), "--compare", "--at", "56d", "--target", "2.5kg"],
                ["compare", scratch.PathOf("weigh-ins.csv"), "--standard", "objectives-2012-male"],
            ])
            {
                ConsoleRun run = ConsoleRun.Of(words);

                run.Exit.Should().BeOneOf([0, 1, 2], "{0} of case {1} ended with {2}", words[0], batch, run.Errors);
                (run.Errors.Length > 0).Should().Be(run.Exit == 2, "{0} of case {1} ended with {2} and {3}", words[0], batch, run.Exit, run.Errors);
                (run.Output + run.Errors).Should().NotContain("NaN", "{0} of case {1}", words[0], batch).And.NotContain("∞");
                answered += run.Exit == 0 ? 1 : 0;
            }
        }

        answered.Should().BeGreaterThan(3 * Batches, "most batches have an answer to most questions");
    }

    /// <summary>The files of one batch.</summary>
    private sealed class OddBatch
    {
        private RandomStream random;

        public OddBatch(int number)
        {
            random = new(20271129, number, 1);
            int birds = OneOf(1, 2, 7, 60, 300, 300, 300, 2500, 100_000);
            Sex = OneOf("mixed", "mixed", "male", "female");
            string type = OneOf("fast", "fast", "slow");
            Prior = type == "slow" ? "slow" : OneOf("fast-outdoor", "fast-objective");
            int today = Below(75);
            WeighIns = WeighInsTo(today, birds);
            Deaths = DeathsTo(today, birds);
            Feed = FeedTo(today, birds);
            Prices = PricesOf();
            Order = OneOf("# rule: as-they-come\ncut,birds\nwhole,100%\n", "# rule: heaviest-first\ncut,birds\nrudn-42d,40%\nwhole,60%\n", "# rule: as-they-come\ncut,birds\nrudn-42d,100%\n");
            Plant = PlantOf(birds);
            int first = Math.Max(15, today - 9) + Below(40);
            string dates = string.Join(", ", Enumerable.Range(0, 1 + Below(3)).Select(at => Inv(
                $"{{ \"date\": \"{Day(first + (7 * at))}\"{(Yes(2) ? Inv($", \"mostBirds\": {OneOf(1, 50, 300, 5000)}") : "")}{(Yes(3) ? ", \"fewestBirds\": 1" : "")} }}")));
            File = Inv($$"""
                {
                  "placed": "2027-04-12", "ageAtPlacement": "{{OneOf(1, 1, 0, 9)}}d", "birds": {{birds}}, "sex": "{{Sex}}", "type": "{{type}}", "until": "{{Math.Max(20, today) + Below(40)}}d",
                  "weights": { {{(Yes(5) ? "" : "\"weighIns\": \"weigh-ins.csv\", ")}}"prior": "{{Prior}}" },
                  "temperatures": {{OneOf("{ \"house\": \"standard\" }", "{ \"moveOut\": \"21d\", \"outside\": \"34C\" }", "{ \"moveOut\": \"14d\", \"outside\": \"-8C\" }")}},
                  "deaths": "deaths.csv",
                  "feed": { {{(Yes(2) ? "\"record\": \"feed.csv\", " : "")}}"waste": "{{OneOf(0, 3, 25)}}%" },
                  "plant": { "dressing": "{{OneOf("planning-fast", "60%", "80%")}}", "perBird": {{OneOf("0", "5.25", "400")}}, "leastCharge": {{OneOf(0, 400, 90_000)}}, "offFeed": "{{OneOf(1, 10, 30)}}h", "road": "{{OneOf(0, 1)}}h",
                    "condemned": {{OneOf("[\"0%\", \"0%\", \"0%\"]", "[\"0.5%\", \"2%\", \"50%\"]", "\"1%\"")}}, {{(Yes(3) ? "\"lightestBird\": \"1.2kg\", \"heaviestBird\": \"1.3kg\", " : "")}}"dates": [ {{dates}} ] },
                  "selling": { "packs": "prices.csv", "order": "order.csv", "deboned": "{{OneOf(0, 100)}}%"{{(Yes(2) ? ", \"wantedFrom\": \"2.3kg\", \"wantedTo\": \"2.31kg\"" : "")}} },
                  "costs": { "chick": {{OneOf("0", "1.95")}}, "labourADay": "{{OneOf(0, 50, 1400)}}min", "labourHour": 17 },
                  "shelters": { "floor": "{{OneOf("0.2m2", "45m2", "9000m2")}}", "limit": "20kg/m2", "restDays": {{OneOf(0, 5)}} }
                }
                """);
        }

        public string File { get; }

        public string WeighIns { get; }

        public string Deaths { get; }

        public string Feed { get; }

        public string Prices { get; }

        public string Order { get; }

        public string Plant { get; }

        public string Sex { get; }

        public string Prior { get; }

        /// <summary>Weeks that were weighed, by a curve of its own; one in ten figures in a wrong unit or of a sick flock.</summary>
        private string WeighInsTo(int today, int birds)
        {
            StringBuilder text = new("age_d,mean_weight_g,birds\n");
            double mature = 3000 + (5000 * random.NextUniform()), rate = 0.02 + (0.04 * random.NextUniform()), inflection = 25 + (30 * random.NextUniform()), scatter = OneOf(0.01, 0.05, 0.2);
            for (int age = 7; age <= today; age += OneOf(7, 7, 7, 1, 14))
            {
                double mean = mature * Math.Exp(-Math.Exp(-rate * (age - inflection)) + (scatter * random.NextNormal())) * (Yes(10) ? OneOf(2.2, 0.4536, 0.1, 0.7) : 1);
                text.Append(Inv($"{age},{Math.Max(8, mean):0.#},{Math.Min(birds, OneOf(1, 10, 30, 300))}\n"));
            }

            return text.ToString();
        }

        private string DeathsTo(int today, int birds)
        {
            StringBuilder text = new("age_d,dead_birds\n");
            for (int age = 10; age <= today && birds > 1; age += 1 + Below(20))
            {
                int dead = Below(Math.Max(1, birds / OneOf(2, 50, 400)));
                birds -= dead;
                text.Append(Inv($"{age},{dead}\n"));
            }

            return text.ToString();
        }

        private string FeedTo(int today, int birds)
        {
            double delivered = birds * 0.003 * today * today * OneOf(0.6, 0.9, 1.0, 1.1, 1.7);
            return today < 10 ? "age_d,delivered_kg,left_kg\n" : Inv($"age_d,delivered_kg,left_kg\n1,{delivered / 3:0.##},\n{today},{delivered:0.##},{delivered / OneOf(3, 9, 50):0.##}\n");
        }

        private string PricesOf()
        {
            StringBuilder text = new("piece,pieces_per_pack,from,to,price,pack_price,sells_low,sells_likely,sells_high,left_price,freezer_packs\n");
            int most = OneOf(0, 3, 100, 100_000);
            text.Append(Inv($"whole,1,,1.7kg,{OneOf("8.50", "0.01")}/kg,,0,{most / 2},{most},,\nwhole,1,1.7kg,,9/kg,,,any,,5/kg,{OneOf(0, 20)}\n"));
            text.Append(Inv($"breast,2,,,18/kg,,{most},{most},{most},9/kg,\nthigh,4,,,,7.5,,any,,,\nframe,1,,,,3,10,25,50,,0\n"));
            return text.ToString();
        }

        private string PlantOf(int birds)
        {
            int delivered = 1 + Below(birds), condemned = Below(delivered);
            double live = delivered * (0.2 + (4 * random.NextUniform())), packed = (delivered - condemned) * (0.2 + (3 * random.NextUniform()));
            return Inv($$"""
                # killed: {{Day(15 + Below(80))}}
                line,what,pieces_per_pack,from,to,count,weight,money,note
                delivered,,,,,{{delivered}},{{live:0.##}}kg,,
                condemned,odd,,,,{{condemned}},,,
                packed,whole,1,,,{{delivered - condemned}},{{packed:0.##}}kg,,
                opened,,,,,{{delivered}},,,
                lesion,green,,,,{{Below(delivered)}},,,

                """);
        }

        private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

        private static string Day(int age) => new DateOnly(2027, 4, 11).AddDays(age).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

        private int Below(int count) => (int)(random.NextUniform() * count);

        private bool Yes(int oneIn) => Below(oneIn) == 0;

        private T OneOf<T>(params ReadOnlySpan<T> values) => values[Below(values.Length)];
    }
}
