using System.Collections.Concurrent;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>The compiler, with what these tests themselves run on as references.</summary>
internal static class CSharp
{
    /// <summary>What the SDK adds to every file of a console project or library.</summary>
    public static readonly IReadOnlyList<string> ImplicitUsings =
        ["System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Net.Http", "System.Threading", "System.Threading.Tasks"];

    /// <summary>The references are read and bound once for each; tests run side by side.</summary>
    private static readonly ConcurrentDictionary<(string AssemblyName, OutputKind Kind), CSharpCompilation> Empty = [];

    private static readonly Lazy<IReadOnlyList<(string Name, MetadataReference Reference)>> Trusted = new(() =>
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => path.EndsWith(".dll", StringComparison.Ordinal))
            .Select(path => (Path.GetFileNameWithoutExtension(path), (MetadataReference)MetadataReference.CreateFromFile(path))),
    ]);

    /// <summary>A compilation of sources (name and text), of which no reference has the name.</summary>
    public static CSharpCompilation Compile(
        string assemblyName, OutputKind kind, IEnumerable<string> usings, IEnumerable<(string Name, string Text)> sources)
    {
        string global = string.Concat(usings.Select(name => $"global using global::{name};\n"));
        return Empty.GetOrAdd((assemblyName, kind), static key => WithoutSources(key.AssemblyName, key.Kind))
            .AddSyntaxTrees(sources.Append(("GlobalUsings.cs", global)).Select(source => Parse(source.Item2, source.Item1)));
    }

    /// <summary>A project of the repository, as its project file names it. Generated code is missing.</summary>
    public static CSharpCompilation Project(string projectFile)
    {
        XDocument project = XDocument.Load(Repository.PathOf(projectFile));
        string assemblyName = project.Descendants("AssemblyName").SingleOrDefault()?.Value ?? Path.GetFileNameWithoutExtension(projectFile);
        OutputKind kind = project.Descendants("OutputType").Any() ? OutputKind.ConsoleApplication : OutputKind.DynamicallyLinkedLibrary;
        IEnumerable<string> usings = ImplicitUsings.Concat(project.Descendants("Using").Select(added => added.Attribute("Include")!.Value));
        return Compile(assemblyName, kind, usings, Repository.Files(Path.GetDirectoryName(projectFile)!, "*.cs").Select(Read));
    }

    public static (string Name, string Text) Read(string file) => (file, File.ReadAllText(Repository.PathOf(file)));

    public static IEnumerable<string> Errors(this CSharpCompilation compilation) =>
        compilation.GetDiagnostics().Where(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error).Select(diagnostic => diagnostic.ToString());

    private static CSharpCompilation WithoutSources(string assemblyName, OutputKind kind)
    {
        CSharpCompilation empty = CSharpCompilation.Create(
            assemblyName,
            references: Trusted.Value.Where(reference => reference.Name != assemblyName).Select(reference => reference.Reference),
            options: new CSharpCompilationOptions(kind, nullableContextOptions: NullableContextOptions.Enable));
        // Binds the references, so that compilations made from this one share them.
        _ = empty.Assembly;
        return empty;
    }

    private static SyntaxTree Parse(string text, string name) =>
        CSharpSyntaxTree.ParseText(text, new CSharpParseOptions(LanguageVersion.CSharp14), name);
}
