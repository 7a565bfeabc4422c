using System.Text.RegularExpressions;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Finds arguments of public members that are a number or a quantity and of which the documentation does not say what is allowed.</summary>
internal static partial class ArgumentDocs
{
    /// <summary>Our own types that hold one measured number, beside the numbers themselves and the quantities of UnitsNet.</summary>
    private static readonly HashSet<string> Measured =
    [
        "Age", "BirdDensity", "BirdPrevalence", "DailyRate", "Money", "MusclePrevalence", "Probability", "StockingDensity", "UnitPrice",
    ];

    /// <summary>One line an argument: type, member and argument.</summary>
    public static IEnumerable<string> Unsaid(Compilation compilation) =>
        Types(compilation.Assembly.GlobalNamespace).Where(type => type.DeclaredAccessibility == Accessibility.Public).SelectMany(Unsaid);

    private static IEnumerable<INamedTypeSymbol> Types(INamespaceSymbol space) => space.GetNamespaceMembers().SelectMany(Types).Concat(space.GetTypeMembers());

    private static IEnumerable<string> Unsaid(INamedTypeSymbol type) =>
        type.GetMembers().OfType<IMethodSymbol>()
            .Where(method => method is { DeclaredAccessibility: Accessibility.Public, MethodKind: MethodKind.Ordinary or MethodKind.Constructor, IsOverride: false, IsImplicitlyDeclared: false })
            .SelectMany(method => Unsaid(type, method));

    private static IEnumerable<string> Unsaid(INamedTypeSymbol type, IMethodSymbol method)
    {
        XElement docs = XElement.Parse(method.GetDocumentationCommentXml() is { Length: > 0 } text ? text : "<member/>");
        return docs.Element("inheritdoc") is not null
            ? []
            : method.Parameters.Where(argument => argument.RefKind != RefKind.Out && IsMeasured(argument.Type) && !SaysRange(docs, argument))
                .Select(argument => $"{type.Name}.{method.Name}: {argument.Name}");
    }

    /// <summary>A number must say its range in words or figures; a type of ours has one of its own, and what the argument is may be enough.</summary>
    private static bool SaysRange(XElement docs, IParameterSymbol argument) =>
        docs.Elements("param").FirstOrDefault(said => said.Attribute("name")!.Value == argument.Name) is { } words
        && (Measured.Contains(Bare(argument.Type).Name) || Range().IsMatch(string.Concat(words.Nodes())));

    private static bool IsMeasured(ITypeSymbol type) =>
        Bare(type) is { } bare
        && (bare.SpecialType is SpecialType.System_Double or SpecialType.System_Int32 or SpecialType.System_Int64
            || Measured.Contains(bare.Name)
            || bare.AllInterfaces.Any(contract => contract.Name == "IQuantity"));

    private static ITypeSymbol Bare(ITypeSymbol type) =>
        type is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } maybe ? maybe.TypeArguments[0] : type;

    [GeneratedRegex(@"\d|above|below|between|or more|or less|finite|\bany\b|\bin the unit\b|later|earlier|older|not more than|place in|lies outside", RegexOptions.IgnoreCase)]
    private static partial Regex Range();
}
