using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Mono.Cecil;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>The check of the arrows sees what it should: small houses with one wrong wall each.</summary>
public class ArrowCheckTests
{
    private const string Rooms =
        """
        namespace Poultry.Growth.Planning { public sealed class Batch { public const int Most = 3; public static int Count() => 1; } public enum Plan { Now } public sealed class MarkAttribute(Type type) : Attribute { public Type Type => type; } }
        namespace Poultry.Growth.Fitting { public sealed class Projection; public sealed class Fit; }
        namespace Poultry.Growth.Primitives { public sealed class Brick; }
        """;

    [Theory]
    [InlineData("Curves", "public object M() => new Planning.Batch();")]
    [InlineData("Curves", "public int M() => Planning.Batch.Count();")]
    [InlineData("Curves", "public Func<int> M() => () => Planning.Batch.Count();")]
    [InlineData("Curves", "public IEnumerable<int> M() { yield return Planning.Batch.Count(); }")]
    [InlineData("Curves", "public async Task M() { await Task.Yield(); Planning.Batch.Count(); }")]
    [InlineData("Curves", "public List<Planning.Batch[]>? M() => null;")]
    [InlineData("Curves", "public void M<T>() where T : List<Planning.Batch> { }")]
    [InlineData("Curves", "public Type M() => typeof(Planning.Batch);")]
    [InlineData("Curves", "public object M() => Array.Empty<Planning.Batch>();")]
    [InlineData("Curves", "[Planning.Mark(typeof(int))] public void M() { }")]
    [InlineData("Curves", "public sealed class Inner { public Planning.Batch? B; }")]
    [InlineData("Curves", "public object M() => new Fitting.Fit();")]
    [InlineData("Primitives", "public object M() => new Fitting.Fit();")]
    [InlineData("Numerics", "public UnitsNet.Mass M() => default;")]
    [InlineData("Feeding", "public object M() => new Fitting.Projection();")]
    [InlineData("Curves", "public double M() => MathNet.Numerics.SpecialFunctions.Erf(1);")]
    [InlineData("Curves", "public void M() => Console.WriteLine();")]
    [InlineData("Curves", "public string M() => File.ReadAllText(\"x\");")]
    [InlineData("Curves", "public object M() => typeof(int).GetMethods();")]
    [InlineData("Cellar", "public int M() => 1;")]
    public void A_wrong_arrow_in_the_compiled_code_is_refused(string room, string member) =>
        ObjectionsIn(Compiled(room, member)).Should().NotBeEmpty();

    [Theory]
    [InlineData("Fitting", "public object M() => new Primitives.Brick();")]
    [InlineData("Planning", "public object M() => new Fitting.Projection();")]
    [InlineData("Feeding", "public object M() => new Fitting.Fit();")]
    [InlineData("Numerics", "public double M() => MathNet.Numerics.SpecialFunctions.Erf(1);")]
    [InlineData("Curves", "public IEnumerable<int> M(int[] a) => a.Where(x => x > 1).Select(x => new { x }).Select(y => y.x);")]
    [InlineData("Curves", "public IReadOnlyList<int> M(int a) => [a, 2];")]
    [InlineData("Curves", "public int this[int i] => i;")]
    public void A_right_arrow_is_not(string room, string member) => ObjectionsIn(Compiled(room, member)).Should().BeEmpty();

    [Theory]
    [InlineData("public int M() => Planning.Batch.Most;")]
    [InlineData("public string M() => nameof(Planning.Batch);")]
    [InlineData("public int M() => (int)Planning.Plan.Now;")]
    public void What_the_compiler_copies_is_seen_in_the_source(string member)
    {
        ObjectionsIn(Compiled("Curves", member)).Should().BeEmpty();
        SourceUses.In(Source("Curves", member)).Select(House.Objection).OfType<string>().Should().NotBeEmpty();
    }

    private static IEnumerable<string> ObjectionsIn(IEnumerable<TypeUse> uses) =>
        uses.Where(use => use.User.EndsWith(".User", StringComparison.Ordinal)).Select(House.Objection).OfType<string>();

    private static CSharpCompilation Source(string room, string member) => CSharp.Compile(
        "Walls",
        OutputKind.DynamicallyLinkedLibrary,
        CSharp.ImplicitUsings,
        [("Rooms.cs", Rooms), ("User.cs", $"namespace Poultry.Growth.{room};\npublic sealed class User {{ {member} }}")]);

    private static IReadOnlyList<TypeUse> Compiled(string room, string member)
    {
        using MemoryStream assembly = new();
        Source(room, member).Emit(assembly).Success.Should().BeTrue();
        assembly.Position = 0;
        using ModuleDefinition module = ModuleDefinition.ReadModule(assembly);
        return TypeUses.In(module);
    }
}
