using Microsoft.CodeAnalysis;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>The same text on every machine.</summary>
public class CultureTextTests
{
    [Theory]
    [InlineData("src/Poultry.Growth/Poultry.Growth.csproj")]
    [InlineData("src/Poultry.Growth.Files/Poultry.Growth.Files.csproj")]
    [InlineData("samples/Poultry.Growth.Calculators/Poultry.Growth.Calculators.csproj")]
    public void No_number_becomes_text_by_the_culture_of_the_machine(string project) =>
        CultureText.In(CSharp.Project(project)).ShouldBeNone();

    [Theory]
    [InlineData("$\"{number}\"")]
    [InlineData("$\"{number:0.00} kg\"")]
    [InlineData("$\"{count} birds\"")]
    [InlineData("$\"{maybe}\"")]
    [InlineData("$\"{mass}\"")]
    [InlineData("$\"{quantity}\"")]
    [InlineData("$\"{day}\"")]
    [InlineData("$\"{time}\"")]
    [InlineData("$\"{thing}\"")]
    [InlineData("$\"{generic}\"")]
    [InlineData("$\"{unknown}\"")]
    [InlineData("$\"{(count > 1 ? number : 0)}\"")]
    [InlineData("\"a\" + number")]
    [InlineData("number + \" kg\"")]
    [InlineData("\"a\" + 1.5")]
    [InlineData("\"a\" + mass + \"b\"")]
    [InlineData("\"a\" + thing")]
    [InlineData("word += number")]
    [InlineData("number.ToString()")]
    [InlineData("number.ToString(\"F2\")")]
    [InlineData("maybe?.ToString()")]
    [InlineData("mass.ToString()")]
    [InlineData("number.ToString(CultureInfo.CurrentCulture)")]
    [InlineData("string.Create(CultureInfo.CurrentCulture, $\"{number}\")")]
    [InlineData("string.Format(\"{0}\", number)")]
    [InlineData("string.Join(\", \", numbers)")]
    [InlineData("string.Join(\", \", new List<Mass>())")]
    [InlineData("string.Concat(word, number)")]
    [InlineData("builder.Append(number)")]
    [InlineData("builder.Append($\"{number}\")")]
    [InlineData("Write(() => Console.WriteLine(number))")]
    [InlineData("Write(() => writer.WriteLine($\"{number}\"))")]
    [InlineData("Write(() => writer.Write(\"{0}\", mass))")]
    public void Text_that_varies_is_found(string expression) => FindingsIn(expression).Should().NotBeEmpty();

    [Theory]
    [InlineData("$\"{word} {sex} {letter}\"")]
    [InlineData("$\"{age}\"")]
    [InlineData("string.Create(CultureInfo.InvariantCulture, $\"{number:0.00} {mass} {thing}\")")]
    [InlineData("FormattableString.Invariant($\"{number}\")")]
    [InlineData("$\"{number.ToString(\"F2\", CultureInfo.InvariantCulture)} kg\"")]
    [InlineData("builder.Append(CultureInfo.InvariantCulture, $\"{number}\")")]
    [InlineData("builder.Append(word).Append(letter).Append('x', 3)")]
    [InlineData("builder.Insert(0, word)")]
    [InlineData("\"a\" + word + letter + sex")]
    [InlineData("\"a\" + word.Length.ToString(CultureInfo.InvariantCulture)")]
    [InlineData("string.Join(\", \", words)")]
    [InlineData("string.Format(CultureInfo.InvariantCulture, \"{0}\", number)")]
    [InlineData("word.PadLeft(count).Substring(count, 1)")]
    [InlineData("age.ToString()")]
    [InlineData("sex.ToString()")]
    [InlineData("number + count")]
    [InlineData("Write(() => writer.WriteLine(word))")]
    public void Text_that_does_not_is_left_alone(string expression) => FindingsIn(expression).Should().BeEmpty();

    private static IEnumerable<string> FindingsIn(string expression) => CultureText.In(CSharp.Compile(
        "Snippet",
        OutputKind.DynamicallyLinkedLibrary,
        [.. CSharp.ImplicitUsings, "System.Globalization", "System.Text", "UnitsNet", "Poultry.Growth.Primitives"],
        [("Snippet.cs", $$"""
            static class Snippet
            {
                static void Write(Action action) => action();

                static object? Text<T>(
                    double number, int count, double? maybe, Mass mass, IQuantity quantity, DateOnly day, TimeSpan time, object thing, T generic,
                    double[] numbers, string[] words, string word, char letter, Sex sex, Age age, StringBuilder builder, TextWriter writer) => {{expression}};
            }
            """)]));
}
