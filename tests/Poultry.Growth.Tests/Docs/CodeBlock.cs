using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;
using Poultry.Growth.Tests.Architecture;

namespace Poultry.Growth.Tests.Docs;

/// <summary>A C# block of a page, compiled as the program it is.</summary>
internal static class CodeBlock
{
    /// <summary>What a page under docs may leave out; README's own example and samples stand by themselves, as in a new console project.</summary>
    private static readonly IReadOnlyList<string> PageUsings = [.. CSharp.ImplicitUsings, "UnitsNet", .. Libraries.Namespaces];

    /// <summary>Compiles and runs under a culture, and returns what it printed.</summary>
    /// <exception cref="FormatException">It does not compile.</exception>
    public static string Run(FencedBlock block, CultureInfo culture)
    {
        using MemoryStream image = Compile(block);
        AssemblyLoadContext context = new(block.ToString(), isCollectible: true);
        (TextWriter console, CultureInfo before) = (Console.Out, CultureInfo.CurrentCulture);
        using StringWriter output = new(culture) { NewLine = "\n" };
        try
        {
            Console.SetOut(output);
            CultureInfo.CurrentCulture = culture;
            MethodInfo main = context.LoadFromStream(image).EntryPoint!;
            main.Invoke(null, BindingFlags.DoNotWrapExceptions, null, main.GetParameters().Length == 0 ? null : [Array.Empty<string>()], null);
            return output.ToString();
        }
        finally
        {
            Console.SetOut(console);
            CultureInfo.CurrentCulture = before;
            context.Unload();
        }
    }

    private static MemoryStream Compile(FencedBlock block)
    {
        IReadOnlyList<string> usings = block.File.StartsWith("docs/", StringComparison.Ordinal) ? PageUsings : CSharp.ImplicitUsings;
        CSharpCompilation compilation = CSharp.Compile("Page", OutputKind.ConsoleApplication, usings, [(block.File, block.Text)]);
        MemoryStream image = new();
        EmitResult result = compilation.Emit(image);
        if (!result.Success)
        {
            throw new FormatException($"{block} does not compile: {string.Join("\n", compilation.Errors())}");
        }

        image.Position = 0;
        return image;
    }
}
