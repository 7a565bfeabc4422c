using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Rooms use only rooms on floors below them.</summary>
public class ArrowTests
{
    [Fact]
    public void No_arrow_runs_upwards_or_sideways() =>
        TypeUses.In(Libraries.Core.Location).Select(House.Objection).OfType<string>().ShouldBeNone();

    /// <summary>A constant, a nameof or an enumeration member is copied in by the compiler and leaves no trace of where it came from.</summary>
    [Fact]
    public void No_name_in_the_source_points_upwards_or_sideways() =>
        SourceUses.In(CSharp.Project("src/Poultry.Growth/Poultry.Growth.csproj")).Select(House.Objection).OfType<string>().ShouldBeNone();

    [Fact]
    public void Files_prints_nothing_reflects_on_nothing_and_leaves_mathematics_to_the_core()
    {
        string[] refused = ["System.Console", "System.Reflection", "MathNet"];

        TypeUses.In(Libraries.Files.Location)
            .Where(use => Array.Exists(refused, name => use.Used.StartsWith(name, StringComparison.Ordinal)))
            .Where(use => use.Used != "System.Reflection.DefaultMemberAttribute")
            // Files that are built in are asked of the assembly: that looks at no type, and no trimming harms it.
            .Where(use => (use.User, use.Used) != ("Poultry.Growth.Files.BatchTemplates", "System.Reflection.Assembly"))
            .ShouldBeNone();
    }

    [Theory]
    [InlineData("Poultry.Growth")]
    [InlineData("Poultry.Growth.Files")]
    public void A_folder_is_a_namespace(string project)
    {
        IReadOnlyList<string> strays =
        [
            .. Repository.Files("src/" + project, "*.cs").Where(file => Declared(file).Any(declared => declared != Expected(file, project))),
        ];

        strays.ShouldBeNone();
    }

    [Fact]
    public void Every_file_of_the_core_stands_in_a_room() =>
        Repository.Files("src/Poultry.Growth", "*.cs").Where(file => !House.Rooms.ContainsKey(file.Split('/')[2])).ShouldBeNone();

    private static IEnumerable<string> Declared(string file) =>
        CSharpSyntaxTree.ParseText(CSharp.Read(file).Text).GetRoot().DescendantNodes()
            .Where(node => node is BaseNamespaceDeclarationSyntax or CompilationUnitSyntax { Members: [not BaseNamespaceDeclarationSyntax, ..] })
            .Select(node => node is BaseNamespaceDeclarationSyntax declared ? declared.Name.ToString() : "none")
            .DefaultIfEmpty("none");

    /// <summary>A room is a namespace, and the second package is one room; what lies in the drawers of a room is in the room.</summary>
    private static string Expected(string file, string project)
    {
        string[] folders = Path.GetDirectoryName(file)!.Replace('\\', '/').Split('/')[1..];
        return folders.Length == 1 || project != House.Namespace ? project : project + "." + folders[1];
    }
}
