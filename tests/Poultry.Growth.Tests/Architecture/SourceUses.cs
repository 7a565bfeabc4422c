using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Every type that the source names, or whose member it names.</summary>
internal static class SourceUses
{
    public static IReadOnlyList<TypeUse> In(CSharpCompilation compilation) =>
        [.. compilation.SyntaxTrees.SelectMany(tree => In(compilation.GetSemanticModel(tree))).Distinct()];

    private static IEnumerable<TypeUse> In(SemanticModel model) =>
        from name in model.SyntaxTree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>()
        let declaration = name.FirstAncestorOrSelf<BaseTypeDeclarationSyntax>()
        where declaration is not null
        let user = Outermost(model.GetDeclaredSymbol(declaration)!)
        let symbol = model.GetSymbolInfo(name).Symbol
        let used = Outermost(symbol as INamedTypeSymbol ?? symbol?.ContainingType)
        where used is not null && !SymbolEqualityComparer.Default.Equals(user, used)
        select new TypeUse(FullName(user), NamespaceOf(user), Line(name), FullName(used), NamespaceOf(used));

    private static INamedTypeSymbol? Outermost(INamedTypeSymbol? type) => type?.ContainingType is null ? type : Outermost(type.ContainingType);

    private static string NamespaceOf(INamedTypeSymbol type) =>
        type.ContainingNamespace is { IsGlobalNamespace: false } containing ? containing.ToDisplayString() : "";

    private static string FullName(INamedTypeSymbol type) =>
        NamespaceOf(type) is { Length: > 0 } containing ? containing + "." + type.MetadataName : type.MetadataName;

    private static string Line(SyntaxNode node) => $"line {node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";
}
