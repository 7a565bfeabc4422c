using System.Text.RegularExpressions;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>Every number has a birth certificate.</summary>
public partial class EvidenceTests
{
    [Fact]
    public void Ids_are_unique_and_written_like_the_page_they_name()
    {
        Models.All.Should().OnlyHaveUniqueItems(model => model.Id);
        Models.All.Where(model => !Kebab().IsMatch(model.Id)).ShouldBeNone("an id is lower case with hyphens");
    }

    [Fact]
    public void Every_model_has_a_source_and_explains_its_symbols() =>
        Models.All.Where(model => model.Citations.Count == 0 || model.Symbols.Count == 0).ShouldBeNone();

    [Fact]
    public void Every_symbol_stands_in_its_equation() =>
        Models.All.SelectMany(model => model.Symbols.Where(symbol => !model.Equation.Contains(symbol.Symbol, StringComparison.Ordinal))
            .Select(symbol => $"{model.Id}: {symbol.Symbol}")).ShouldBeNone();

    [Fact]
    public void A_key_names_one_source() =>
        Models.All.SelectMany(model => model.Citations).GroupBy(citation => citation.Key)
            .Where(group => group.Select(citation => citation.Reference).Distinct().Count() > 1)
            .Select(group => group.Key).ShouldBeNone();

    [Fact]
    public void Whatever_claims_to_be_a_model_has_evidence() =>
        Libraries.PublicTypes.Where(LacksEvidence).ShouldBeNone(
            "a type that implements an interface with a ModelInfo names its own in a static member, or is given one when made");

    [Fact]
    public void A_model_without_evidence_is_found()
    {
        LacksEvidence(typeof(Unfounded)).Should().BeTrue();
        LacksEvidence(typeof(Founded)).Should().BeFalse();
        LacksEvidence(typeof(Given)).Should().BeFalse();
        Models.Of(typeof(Founded)).Should().Equal(Founded.Info);
    }

    private static bool LacksEvidence(Type type) =>
        type is { IsInterface: false, IsAbstract: false }
        && type.GetInterfaces().Any(contract => Models.EvidenceProperty(contract) is not null)
        && !Models.Of(type).Any()
        && !Surface.Callables(type).SelectMany(callable => callable.GetParameters())
            .Any(parameter => parameter.ParameterType == typeof(ModelInfo) || parameter.ParameterType == typeof(Citation));

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();

    internal interface IModel
    {
        ModelInfo Model { get; }
    }

    internal sealed class Unfounded : IModel
    {
        public ModelInfo Model => Founded.Info;
    }

    internal sealed class Founded : IModel
    {
        public static ModelInfo Info { get; } = new(
            "line", "Line", "y = a x", [new("a", "slope", "-")], [new("Anyone", "Mathematics", HowKnown.Derived)], "exact", HowKnown.Derived);

        public ModelInfo Model => Info;
    }

    internal sealed class Given(ModelInfo model) : IModel
    {
        public ModelInfo Model => model;
    }
}
