using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>
/// Finds text whose look depends on the culture of the machine: a number, a date or a quantity in an interpolation, a concatenation, a
/// <c>ToString</c>, or handed to something that writes it, without a format provider. Analysers miss most of these.
/// </summary>
internal sealed class CultureText
{
    /// <summary>Types whose methods turn any argument into text.</summary>
    private static readonly HashSet<string> Writers =
        ["System.Console", "System.IO.TextWriter", "System.IO.StringWriter", "System.IO.StreamWriter", "System.Text.StringBuilder", "string"];

    /// <summary>Formattable, but the same in every culture.</summary>
    private static readonly HashSet<string> SameEverywhere = ["char", "System.Guid", "System.Version", "System.Text.Rune"];

    private readonly SemanticModel model;
    private readonly INamedTypeSymbol formattable;
    private readonly INamedTypeSymbol provider;

    private CultureText(Compilation compilation, SyntaxTree tree)
    {
        model = compilation.GetSemanticModel(tree);
        formattable = compilation.GetTypeByMetadataName("System.IFormattable")!;
        provider = compilation.GetTypeByMetadataName("System.IFormatProvider")!;
    }

    /// <summary>One line a finding: file, line and the text at fault.</summary>
    public static IEnumerable<string> In(Compilation compilation) =>
        compilation.SyntaxTrees.SelectMany(tree => new CultureText(compilation, tree).Findings(tree.GetRoot()).Select(Describe));

    private IEnumerable<SyntaxNode> Findings(SyntaxNode root) => root.DescendantNodes().SelectMany(node => node switch
    {
        InterpolatedStringExpressionSyntax text when !IsInvariant(text) => text.Contents.OfType<InterpolationSyntax>()
            .Where(hole => Varies(hole.Expression) || Hides(hole.Expression)).Select(hole => (SyntaxNode)hole.Expression),
        BinaryExpressionSyntax sum when sum.IsKind(SyntaxKind.AddExpression) && IsText(sum) =>
            new[] { sum.Left, sum.Right }.Where(operand => Varies(operand) || Hides(operand)),
        AssignmentExpressionSyntax sum when sum.IsKind(SyntaxKind.AddAssignmentExpression) && IsText(sum.Left) =>
            new[] { sum.Right }.Where(operand => Varies(operand) || Hides(operand)),
        InvocationExpressionSyntax call => OfCall(call),
        _ => [],
    });

    private IEnumerable<SyntaxNode> OfCall(InvocationExpressionSyntax call)
    {
        if (model.GetSymbolInfo(call).Symbol is not IMethodSymbol method || HasProvider(call.ArgumentList))
        {
            return [];
        }

        if (method.Name == "ToString" && Receiver(call) is { } receiver)
        {
            return Varies(receiver) ? [call] : [];
        }

        return Writers.Contains(method.ContainingType.ToDisplayString()) && method.Name is not ("Remove" or "Substring")
            ? call.ArgumentList.Arguments.Where((argument, i) => BecomesText(method, i) && Varies(argument.Expression)).Select(argument => argument.Expression)
            : [];
    }

    /// <summary>
    /// An argument that is written: it stands where the method takes a number or anything, and is not a position, a count or a padding.
    /// </summary>
    private static bool BecomesText(IMethodSymbol method, int index)
    {
        IParameterSymbol parameter = method.Parameters[Math.Min(index, method.Parameters.Length - 1)];
        return parameter.Name is "value" or "values" or "args" or "arg" or "arg0" or "arg1" or "arg2" or "arg3"
            && method.Name is "Write" or "WriteLine" or "WriteAsync" or "WriteLineAsync" or "Append" or "AppendJoin" or "AppendFormat" or "AppendLine"
                or "Insert" or "Format" or "Join" or "Concat";
    }

    private static ExpressionSyntax? Receiver(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax access => access.Expression,
        MemberBindingExpressionSyntax => call.FirstAncestorOrSelf<ConditionalAccessExpressionSyntax>()?.Expression,
        _ => null,
    };

    /// <summary>Whether the text goes straight into a call that is told the culture.</summary>
    private bool IsInvariant(InterpolatedStringExpressionSyntax text) =>
        text.Parent is ArgumentSyntax { Parent: ArgumentListSyntax { Parent: InvocationExpressionSyntax call } arguments }
        && (HasProvider(arguments)
            || model.GetSymbolInfo(call).Symbol is { Name: "Invariant", ContainingType.Name: "FormattableString" });

    private bool HasProvider(ArgumentListSyntax arguments) => arguments.Arguments.Any(argument =>
        model.GetTypeInfo(argument.Expression).Type is { } type
        && Is(type, provider)
        && model.GetSymbolInfo(argument.Expression).Symbol?.Name is not ("CurrentCulture" or "CurrentUICulture" or "InstalledUICulture"));

    /// <summary>Whether a sum is text; one that the compiler could not make out may be.</summary>
    private bool IsText(ExpressionSyntax expression) =>
        model.GetTypeInfo(expression).Type is { SpecialType: SpecialType.System_String } or { TypeKind: TypeKind.Error };

    private bool Varies(ExpressionSyntax expression) => Varies(model.GetTypeInfo(expression).Type);

    /// <summary>Whether what is printed cannot be seen from the type: a number may stand behind it.</summary>
    private bool Hides(ExpressionSyntax expression) =>
        model.GetTypeInfo(expression).Type is { } type
        && (type.SpecialType is SpecialType.System_Object or SpecialType.System_ValueType
            || type.TypeKind is TypeKind.Dynamic or TypeKind.Error or TypeKind.TypeParameter
            || (type.OriginalDefinition.SpecialType == SpecialType.System_Nullable_T && ((INamedTypeSymbol)type).TypeArguments[0].TypeKind == TypeKind.TypeParameter));

    private bool Varies(ITypeSymbol? type) => type switch
    {
        null => false,
        IArrayTypeSymbol array => Varies(array.ElementType),
        { TypeKind: TypeKind.Enum } => false,
        INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } nullable => Varies(nullable.TypeArguments[0]),
        ITypeParameterSymbol parameter => parameter.ConstraintTypes.Any(Varies),
        _ when SameEverywhere.Contains(type.ToDisplayString(NullableFlowState.None)) => false,
        _ when Is(type, formattable) => true,
        INamedTypeSymbol named => Sequence(named) is { } sequence && sequence.TypeArguments.Any(Varies),
        _ => false,
    };

    private static INamedTypeSymbol? Sequence(INamedTypeSymbol type) =>
        type.SpecialType == SpecialType.System_String ? null
        : type.AllInterfaces.Append(type).FirstOrDefault(i => i.OriginalDefinition.SpecialType == SpecialType.System_Collections_Generic_IEnumerable_T)
            ?? (type.Name is "Span" or "ReadOnlySpan" ? type : null);

    private static bool Is(ITypeSymbol type, INamedTypeSymbol contract) =>
        SymbolEqualityComparer.Default.Equals(type, contract) || type.AllInterfaces.Contains(contract, SymbolEqualityComparer.Default);

    private static string Describe(SyntaxNode node)
    {
        FileLinePositionSpan span = node.GetLocation().GetLineSpan();
        return $"{span.Path}({span.StartLinePosition.Line + 1}): {node}";
    }
}
