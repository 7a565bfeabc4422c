using Microsoft.CodeAnalysis;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Whoever calls a member reads what it takes: every number and quantity says its range.</summary>
public class ArgumentDocsTests
{
    [Theory]
    [InlineData("Poultry.Growth")]
    [InlineData("Poultry.Growth.Files")]
    public void Every_measured_argument_says_what_is_allowed(string project) =>
        ArgumentDocs.Unsaid(CSharp.Project($"src/{project}/{project}.csproj")).ShouldBeNone("a number or a quantity has a param with its range");

    [Theory]
    [InlineData("public static void M(double days) { }", true)]
    [InlineData("/// <summary>S.</summary>\n/// <param name=\"days\">How long.</param>\npublic static void M(double days) { }", true)]
    [InlineData("/// <summary>S.</summary>\n/// <param name=\"days\">How long, 0 or more.</param>\npublic static void M(double days) { }", false)]
    [InlineData("/// <summary>S.</summary>\npublic static void M(UnitsNet.Mass? weight) { }", true)]
    [InlineData("/// <summary>S.</summary>\npublic static void M(Poultry.Growth.Primitives.Age age) { }", true)]
    [InlineData("/// <summary>S.</summary>\n/// <param name=\"age\">Of the birds.</param>\npublic static void M(Poultry.Growth.Primitives.Age age) { }", false)]
    [InlineData("public static void M(out double days) => days = 0;", false)]
    [InlineData("internal static void M(double days) { }", false)]
    [InlineData("public static void M(string name) { }", false)]
    public void An_argument_without_range_is_found(string member, bool found) => ArgumentDocs.Unsaid(CSharp.Compile(
        "Documented", OutputKind.DynamicallyLinkedLibrary, CSharp.ImplicitUsings, [("Documented.cs", "public class Documented {\n" + member + "\n}")])).Any().Should().Be(found);
}
