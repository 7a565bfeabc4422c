using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Mono.Cecil;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>What the packages show keeps the rules of the house.</summary>
public class SurfaceTests
{
    [Fact]
    public void No_type_of_MathNet_shows() =>
        Offenders(type => Surface.Mentioned(type).Any(shown => shown.Namespace!.StartsWith("MathNet", StringComparison.Ordinal))).ShouldBeNone();

    [Fact]
    public void Every_bare_number_says_its_unit_or_has_an_explained_meaning() =>
        Libraries.PublicTypes.SelectMany(BareNumbers.Of)
            .Where(number => !UnitNames.SayUnitOrMeaning(number.Owner, number.Name))
            .ShouldBeNone("a bare number has its unit in its name, or its meaning is listed in UnitNames.cs");

    [Fact]
    public void Nothing_can_be_changed_from_outside() =>
        Libraries.PublicTypes.SelectMany(Changeable).ShouldBeNone();

    [Fact]
    public void No_state_is_shared() =>
        Libraries.WrittenTypes.SelectMany(SharedState).ShouldBeNone("a static field is read-only and holds nothing that can be written to");

    [Fact]
    public void Classes_are_sealed_or_static_or_abstract_and_closed() => Offenders(IsOpen).ShouldBeNone();

    [Fact]
    public void Structs_are_read_only_and_have_their_own_equality() => Offenders(IsLooseStruct).ShouldBeNone();

    /// <summary>A positional record that checks what it is given can be led past its check by <c>with</c>.</summary>
    [Fact]
    public void No_validated_type_is_a_positional_record()
    {
        using ModuleDefinition core = ModuleDefinition.ReadModule(Libraries.Core.Location);
        using ModuleDefinition files = ModuleDefinition.ReadModule(Libraries.Files.Location);

        core.GetTypes().Concat(files.GetTypes()).Where(IsValidatedPositionalRecord).ShouldBeNone();
    }

    [Fact]
    public void Every_enumeration_and_its_members_are_documented()
    {
        HashSet<string> documented = [.. new[] { Libraries.Core, Libraries.Files }.SelectMany(Documented)];

        Libraries.PublicTypes.Where(type => type.IsEnum)
            .SelectMany(type => Enum.GetNames(type).Select(name => $"F:{type.FullName}.{name}").Append("T:" + type.FullName))
            .Where(name => !documented.Contains(name))
            .ShouldBeNone();
    }

    internal static IEnumerable<string> Changeable(Type type) =>
        Surface.Fields(type).Where(field => !field.IsInitOnly && !field.IsLiteral && !type.IsEnum).Select(field => $"{type}.{field.Name}")
            .Concat(Surface.Properties(type).Where(Surface.CanBeSetLater).Select(property => $"{type}.{property.Name}"));

    internal static IEnumerable<string> SharedState(Type type) =>
        type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(field => !field.IsLiteral && (!field.IsInitOnly || CanBeWrittenTo(field.FieldType)))
            // The compiler keeps the delegates of method groups and lambdas in fields with such names.
            .Where(field => field.Name[0] != '<' || field.Name.EndsWith(">k__BackingField", StringComparison.Ordinal))
            .Select(field => $"{type}.{field.Name}");

    internal static bool IsOpen(Type type) =>
        type.IsClass && !type.IsSealed
        && !(type.IsAbstract && type.GetConstructors(BindingFlags.Instance | BindingFlags.Public).Length == 0);

    internal static bool IsLooseStruct(Type type) =>
        type is { IsValueType: true, IsEnum: false }
        && (!type.IsDefined(typeof(IsReadOnlyAttribute), inherit: false)
            || (!type.IsByRefLike && !type.GetInterfaces().Contains(typeof(IEquatable<>).MakeGenericType(type))));

    internal static bool IsValidatedPositionalRecord(TypeDefinition type) =>
        type.Methods.Any(method => method.Name == "PrintMembers")
        && type.Methods.Any(method => method.Name == "Deconstruct" && method.CustomAttributes.Any(a => a.AttributeType.Name == nameof(CompilerGeneratedAttribute)))
        && type.Methods.Where(method => method is { IsConstructor: true, IsStatic: false, HasBody: true } || method.IsSetter)
            .Where(method => !method.CustomAttributes.Any(a => a.AttributeType.Name == nameof(CompilerGeneratedAttribute)))
            .SelectMany(method => method.Body.Instructions)
            .Any(instruction => instruction.OpCode.FlowControl == Mono.Cecil.Cil.FlowControl.Throw
                || (instruction.Operand is MethodReference { Name: not ".ctor" } call && !IsCoverageCounter(call)));

    /// <summary>The coverage run writes a call into every line; it is no check.</summary>
    private static bool IsCoverageCounter(MethodReference call) => call.DeclaringType.FullName.StartsWith("Coverlet.", StringComparison.Ordinal);

    private static bool CanBeWrittenTo(Type type) =>
        type.IsArray
        || (type.Namespace == "System.Collections.Generic" && type.IsClass)
        || type.Namespace is "System.Collections.Concurrent" or "System.Text";

    private static IEnumerable<string> Documented(Assembly assembly) =>
        XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml")).Descendants("member")
            .Where(member => !string.IsNullOrWhiteSpace(member.Element("summary")?.Value))
            .Select(member => member.Attribute("name")!.Value);

    private static IEnumerable<Type> Offenders(Func<Type, bool> offends) => Libraries.PublicTypes.Where(offends);
}
