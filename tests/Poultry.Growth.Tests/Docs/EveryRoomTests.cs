using System.Globalization;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Docs;

/// <summary>samples/EveryRoom, which .ci/run builds from the packed packages, is held against the sources here, so that it cannot rot in between.</summary>
[Collection(ProcessWide.Name)]
public class EveryRoomTests
{
    private const string Folder = "samples/EveryRoom/";

    private const string UnusedUsing = "CS8019";

    private static readonly (string Name, string Text) Sample = CSharp.Read(Folder + "Program.cs");

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void It_prints_what_stands_beside_it(string culture)
    {
        FencedBlock whole = new(Sample.Name, 1, "csharp", Sample.Text, LeadsOn: false);

        GeneratedPage.ShouldBeFresh(Folder + "output.txt", CodeBlock.Run(whole, CultureInfo.GetCultureInfo(culture)));
    }

    [Fact]
    public void It_uses_every_room_in_fewer_than_sixty_lines()
    {
        Sample.Text.AsSpan().Count('\n').Should().BeLessThan(60);
        Libraries.Namespaces.Except(NamespacesUsedBy(Sample)).ShouldBeNone();
    }

    [Theory]
    [InlineData("using Poultry.Growth.Primitives; System.Console.WriteLine(Age.Hatch);", "Poultry.Growth.Primitives")]
    [InlineData("using Poultry.Growth.Primitives; System.Console.WriteLine();", "")]
    public void A_room_that_is_only_named_is_not_used(string code, string used) =>
        string.Concat(NamespacesUsedBy(("Program.cs", code))).Should().Be(used);

    [Fact]
    public void It_asks_for_the_version_that_is_packed() =>
        Xml(Folder + "EveryRoom.csproj").Descendants("PackageReference")
            .Select(package => $"{package.Attribute("Include")!.Value} {package.Attribute("Version")!.Value}")
            .Should().BeEquivalentTo(new[] { Libraries.Core, Libraries.Files }
                .Select(library => $"{library.GetName().Name} {Xml("Directory.Build.props").Descendants("Version").Single().Value}"));

    private static IEnumerable<string> NamespacesUsedBy((string Name, string Text) program)
    {
        CSharpCompilation compilation = CSharp.Compile("Page", OutputKind.ConsoleApplication, CSharp.ImplicitUsings, [program]);
        HashSet<int> unused = compilation.GetDiagnostics()
            .Where(diagnostic => diagnostic.Id == UnusedUsing && diagnostic.Location.SourceTree!.FilePath == program.Name)
            .Select(diagnostic => diagnostic.Location.SourceSpan.Start).ToHashSet();
        return compilation.SyntaxTrees.Single(tree => tree.FilePath == program.Name).GetCompilationUnitRoot().Usings
            .Where(line => !unused.Contains(line.SpanStart))
            .Select(line => line.Name!.ToString());
    }

    private static XDocument Xml(string file) => XDocument.Load(Repository.PathOf(file));
}
