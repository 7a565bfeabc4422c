using Mono.Cecil;
using Mono.Cecil.Cil;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Every use of a type in a compiled assembly: signatures, attributes, constraints, method bodies, and what the compiler made of lambdas and iterators.</summary>
internal static class TypeUses
{
    public static IReadOnlyList<TypeUse> In(string assemblyPath)
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(assemblyPath);
        return In(module);
    }

    public static IReadOnlyList<TypeUse> In(ModuleDefinition module) =>
        [.. module.GetTypes().Where(IsWritten).SelectMany(OfType).Distinct()];

    /// <summary>
    /// Not what the compiler adds beside our types (it lives in no namespace of ours and its name has angle brackets, or it is embedded),
    /// nor the counter that the coverage run puts in.
    /// </summary>
    private static bool IsWritten(TypeDefinition type)
    {
        TypeReference outermost = Outermost(type);
        return !(outermost.Name.StartsWith('<') && outermost.Namespace.Length == 0)
            && !outermost.Resolve().CustomAttributes.Any(attribute => attribute.AttributeType.Name == "EmbeddedAttribute")
            && !IsCoverage(outermost);
    }

    private static bool IsCoverage(TypeReference type) => type.Namespace.StartsWith("Coverlet.", StringComparison.Ordinal);

    private static IEnumerable<TypeUse> OfType(TypeDefinition type)
    {
        TypeReference user = Outermost(type);
        return Mentions(type)
            .SelectMany(mention => Parts(mention.Type).Select(part => (mention.Member, Type: Outermost(part))))
            .Where(mention => !IsCoverage(mention.Type) && mention.Type.FullName != user.FullName)
            .Select(mention => new TypeUse(user.FullName, user.Namespace, mention.Member, mention.Type.FullName, mention.Type.Namespace))
            .DefaultIfEmpty(new TypeUse(user.FullName, user.Namespace, "itself", user.FullName, user.Namespace));
    }

    private static IEnumerable<(string Member, TypeReference? Type)> Mentions(TypeDefinition type)
    {
        IEnumerable<TypeReference?> header =
            [type.BaseType, .. type.Interfaces.Select(i => i.InterfaceType), .. Attributes(type), .. Constraints(type)];
        return Named("its declaration", header)
            .Concat(type.Fields.SelectMany(field => Named(field.Name, [field.FieldType, .. Attributes(field)])))
            .Concat(type.Properties.SelectMany(property => Named(property.Name, [property.PropertyType, .. Attributes(property)])))
            .Concat(type.Events.SelectMany(@event => Named(@event.Name, [@event.EventType, .. Attributes(@event)])))
            .Concat(type.Methods.SelectMany(method => Named(method.Name, OfMethod(method))));
    }

    private static IEnumerable<(string Member, TypeReference? Type)> Named(string member, IEnumerable<TypeReference?> types) =>
        types.Select(type => (member, type));

    private static IEnumerable<TypeReference?> OfMethod(MethodDefinition method) =>
    [
        method.ReturnType,
        .. Attributes(method),
        .. Attributes(method.MethodReturnType),
        .. Constraints(method),
        .. method.Parameters.SelectMany(parameter => Attributes(parameter).Append(parameter.ParameterType)),
        .. method.Overrides.SelectMany(OfReference),
        .. method.HasBody ? OfBody(method.Body) : [],
    ];

    private static IEnumerable<TypeReference?> OfBody(MethodBody body) =>
        body.Variables.Select(variable => variable.VariableType)
            .Concat(body.ExceptionHandlers.Select(handler => handler.CatchType))
            .Concat(body.Instructions.SelectMany(OfInstruction));

    private static IEnumerable<TypeReference?> OfInstruction(Instruction instruction) => instruction.Operand switch
    {
        TypeReference type => [type],
        MethodReference method => OfReference(method),
        FieldReference field => [field.DeclaringType, field.FieldType],
        CallSite site => site.Parameters.Select(parameter => parameter.ParameterType).Append(site.ReturnType),
        _ => [],
    };

    private static IEnumerable<TypeReference?> OfReference(MethodReference method) =>
    [
        method.DeclaringType,
        method.ReturnType,
        .. method.Parameters.Select(parameter => parameter.ParameterType),
        .. method is GenericInstanceMethod generic ? generic.GenericArguments : [],
    ];

    private static IEnumerable<TypeReference?> Constraints(IGenericParameterProvider provider) =>
        provider.GenericParameters.SelectMany(parameter =>
            parameter.Constraints.Select(constraint => constraint.ConstraintType).Concat(Attributes(parameter)));

    private static IEnumerable<TypeReference?> Attributes(ICustomAttributeProvider provider) =>
        provider.CustomAttributes.SelectMany(attribute => attribute.ConstructorArguments
            .Concat(attribute.Properties.Concat(attribute.Fields).Select(named => named.Argument))
            .SelectMany(argument => new[] { argument.Type, argument.Value as TypeReference })
            .Append(attribute.AttributeType));

    /// <summary>The types that a type is put together from: of an array of Interval of Mass, Interval and Mass.</summary>
    private static IEnumerable<TypeReference> Parts(TypeReference? type) => type switch
    {
        null or GenericParameter => [],
        GenericInstanceType generic => generic.GenericArguments.SelectMany(Parts).Append(generic.ElementType),
        IModifierType modified => Parts(modified.ElementType).Concat(Parts(modified.ModifierType)),
        FunctionPointerType pointer => pointer.Parameters.SelectMany(p => Parts(p.ParameterType)).Concat(Parts(pointer.ReturnType)),
        TypeSpecification wrapped => Parts(wrapped.ElementType),
        _ => [type],
    };

    private static TypeReference Outermost(TypeReference type) => type.DeclaringType is null ? type : Outermost(type.DeclaringType);
}
