using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

/// <summary>Whatever stands in a file, reading it ends with a series or with problems that name their place, and never with an exception.</summary>
public sealed class WeighInFileFuzzTests
{
    private const string Letters = "0123456789.,;:\t\"#\n\r -+eE%gkblozNa_\u00FC\uFEFF\uD83D";

    private static readonly string[] Seeds =
    [
        "age_d,weight_g,mean_weight_g,total_weight_kg,birds,sd_g,sex,note\n7,171,,,,,,\n7,164,,,,,,\"a, b\"\n14,,428,,20,37,m,\n21,,,17.4,20,,,\n28,1480,,,,,f,\n",
        "# placed: 2027-04-12\n# age_at_placement_d: 1\r\ndate;weight_lb_oz\r\n2027-05-01;1:11\r\n2027-05-20;3:09\r\n2027-06-01;4:15\r\n",
        "age_wk\tweight_lb\n6\t5.11\n7\t6.03\n7\t6.10\n8\t7.15\n",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Mutated_files_are_read_or_refused(int seed)
    {
        Random random = new(seed);
        int read = 0;
        for (int round = 0; round < 1000; round++)
        {
            string text = Mutated(Seeds[round % Seeds.Length], random);
            WeighInFileOptions options = new()
            {
                ExcludeFlagged = random.Next(2) == 0,
                Placed = random.Next(4) == 0 ? new DateOnly(2027, 4, 1) : null,
                AgeAtPlacement = random.Next(4) == 0 ? Age.FromDays(3) : null,
            };

            WeighInReading reading = WeighInFile.ReadText(new StringReader(text), "f.csv", options);

            (reading.Series is null).Should().Be(reading.Problems.Count > 0);
            int lines = text.Count(letter => letter is '\n' or '\r') + 1;
            reading.Problems.All(problem => problem.Line <= lines && (problem.Line == 0) == (problem.Column == 0) && problem.Expected.Length > 0).Should().BeTrue();
            reading.Suspicions.All(suspicion => suspicion.Lines.Count > 0 && suspicion.Text.Length > 0).Should().BeTrue();
            read += reading.Series is null ? 0 : 1;
        }

        read.Should().BeInRange(200, 800, "both ways are to be walked, and one file in five is left as it is");
    }

    private static string Mutated(string text, Random random)
    {
        for (int change = random.Next(5); change > 0; change--)
        {
            int at = random.Next(text.Length), length = Math.Min(random.Next(1, 4), text.Length - at);
            string some = string.Concat(Enumerable.Range(0, length).Select(_ => Letters[random.Next(Letters.Length)]));
            text = random.Next(4) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, some),
                2 => text.Remove(at, length).Insert(at, some),
                _ => text.Insert(at, text.Substring(at, Math.Min(random.Next(40), text.Length - at))),
            };
            text = text.Length == 0 ? "7" : text;
        }

        return text;
    }
}
