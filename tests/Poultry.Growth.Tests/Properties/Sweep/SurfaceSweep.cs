using System.Collections;
using System.Reflection;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Properties.Sweep;

/// <summary>Calls whatever the library shows, at random, with the ends of what may be typed and with nonsense, and notes what is neither an answer nor a clear refusal.</summary>
internal sealed class SurfaceSweep
{
    private const int MostReplays = 2500;

    private readonly Random random;
    private readonly ValuePool pool;
    private readonly MethodBase[] callables;

    public SurfaceSweep(int seed, params object[] seeds)
    {
        (random, pool) = (new Random(seed), new ValuePool(new Random(seed + 1)));
        Array.ForEach(seeds, pool.Add);
        callables = [.. Libraries.Core.GetExportedTypes().Where(type => !type.IsGenericTypeDefinition && !type.IsInterface).SelectMany(Callables)];
    }

    /// <summary>What must not be, each once: an exception that is no refusal, or a number that is none.</summary>
    public Dictionary<string, string> Faults { get; } = [];

    /// <summary>Members that answered at least once.</summary>
    public HashSet<string> Answered { get; } = [];

    /// <summary>Calls that were answered, and what the answer says to the last bit: to be made again.</summary>
    public List<(string Call, Func<object?> Again, string Answer)> Replays { get; } = [];

    public void Run(int calls)
    {
        for (int call = 0; call < calls; call++)
        {
            Call(callables[random.Next(callables.Length)]);
        }
    }

    private static IEnumerable<MethodBase> Callables(Type type) => type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        .OfType<MethodBase>()
        .Where(member => !member.IsAbstract || member.DeclaringType is { IsAbstract: true })
        .Where(member => !member.IsGenericMethodDefinition && !(member is ConstructorInfo && type.IsAbstract) && !member.Name.StartsWith("set_", StringComparison.Ordinal))
        .Where(member => member.Name is not ("GetHashCode" or "Equals" or "GetType" or "ToString"))
        .Where(member => !member.GetParameters().Any(parameter => parameter.ParameterType.IsByRefLike || parameter.ParameterType.IsByRef));

    private static string NameOf(MethodBase member) => member.DeclaringType!.Name + "." + member.Name;

    private void Call(MethodBase member)
    {
        object? target = null;
        if (!member.IsStatic && member is MethodInfo && !pool.TryGive(member.DeclaringType!, "", out target))
        {
            return;
        }

        ParameterInfo[] parameters = member.GetParameters();
        object?[] arguments = new object?[parameters.Length];
        for (int i = 0; i < parameters.Length; i++)
        {
            if (parameters[i].IsOptional && random.Next(2) == 0)
            {
                arguments[i] = parameters[i].DefaultValue is { } usual && Nullable.GetUnderlyingType(parameters[i].ParameterType) is { IsEnum: true } kind ? Enum.ToObject(kind, usual) : parameters[i].DefaultValue;
            }
            else if (!pool.TryGive(parameters[i].ParameterType, parameters[i].Name!, out arguments[i]))
            {
                return;
            }
        }

        string call = NameOf(member) + "(" + string.Join(", ", arguments.Select(Words)) + ")" + (target is null ? "" : " of " + Words(target));
        try
        {
            object? result = member is ConstructorInfo constructor ? Made(constructor, arguments) : ((MethodInfo)member).Invoke(target, arguments);
            Look(member, call, result);
            pool.Add(result);
            Answered.Add(NameOf(member));
            if (member is MethodInfo method && Replays.Count < MostReplays)
            {
                Replays.Add((call, () => method.Invoke(target, arguments), Snapshot.Of(result)));
            }
        }
        catch (TargetInvocationException thrown) when (thrown.InnerException is { } inner)
        {
            if (!IsRefusal(member, inner))
            {
                Faults.TryAdd(NameOf(member) + " " + inner.GetType().Name, call + ": " + inner);
            }
        }
    }

    /// <summary>An object by its constructor, and its init properties set.</summary>
    private object Made(ConstructorInfo constructor, object?[] arguments)
    {
        object made = constructor.Invoke(arguments);
        foreach (PropertyInfo property in constructor.DeclaringType!.GetProperties().Where(property => property.SetMethod is { IsPublic: true }))
        {
            bool needed = property.Name == "Draws" || property.CustomAttributes.Any(attribute => attribute.AttributeType.Name == "RequiredMemberAttribute");
            if ((needed || random.Next(3) == 0) && pool.TryGive(property.PropertyType, property.Name, out object? value))
            {
                property.SetValue(made, value);
            }
            else if (needed)
            {
                throw new TargetInvocationException(new InvalidOperationException("nothing to give for a required property"));
            }
        }

        return made;
    }

    private static bool IsRefusal(MethodBase member, Exception exception) => exception is IndexOutOfRangeException ? member.Name == "get_Item" : exception is ArgumentException { ParamName.Length: > 0, Message.Length: > 10 } or InvalidOperationException { Message.Length: > 10 };

    private string Words(object? value) => value switch
    {
        null => "null",
        string text => "\"" + text + "\"",
        IEnumerable values => "[" + string.Join(", ", values.Cast<object?>().Take(5).Select(Words)) + "]",
        _ => value.GetType().Name + " " + Printed(value),
    };

    /// <summary>What an object says of itself: that never fails.</summary>
    private string Printed(object value)
    {
        try
        {
            string text = value.ToString()!;
            return !value.GetType().GetProperties().Any(property => property.SetMethod is not null) ? text
                : text + " { " + string.Join(", ", value.GetType().GetProperties().Where(property => property.GetIndexParameters().Length == 0 && property.SetMethod is not null).Select(property => property.Name + " = " + Words(property.GetValue(value)))) + " }";
        }
#pragma warning disable CA1031 // Whatever is thrown here is a fault.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            Faults.TryAdd(value.GetType().Name + ".ToString", exception.ToString());
            return "?";
        }
    }

    private void Look(MethodBase member, string call, object? result)
    {
        if (member.DeclaringType!.Name.EndsWith("Record", StringComparison.Ordinal))
        {
            return;
        }

        if (Holes(result, 3).FirstOrDefault() is { } hole)
        {
            Faults.TryAdd(NameOf(member) + " NaN", call + ": " + hole);
        }
    }

    /// <summary>Where a result holds a number that is none.</summary>
    private static IEnumerable<string> Holes(object? value, int depth) => value switch
    {
        null or string => [],
        double number => double.IsNaN(number) ? ["NaN"] : [],
        IQuantity quantity => double.IsNaN((double)quantity.Value) ? ["NaN " + quantity.Unit] : [],
        IEnumerable values => values.Cast<object?>().Take(20).SelectMany(one => Holes(one, depth - 1)),
        _ when depth > 0 && Libraries.Namespaces.Contains(value.GetType().Namespace ?? "") && !value.GetType().IsEnum && !value.GetType().Name.EndsWith("Record", StringComparison.Ordinal) =>
            value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0)
                .SelectMany(property => Holes(Property(property, value), depth - 1).Select(hole => property.Name + "." + hole)),
        _ => [],
    };

    private static object? Property(PropertyInfo property, object value)
    {
        try
        {
            return property.GetValue(value);
        }
        catch (TargetInvocationException thrown) when (thrown.InnerException is { } inner && IsRefusal(property.GetMethod!, inner))
        {
            return null;
        }
    }
}
