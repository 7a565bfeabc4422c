using Poultry.Growth.Planning;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Planning;

public class PlantTermsTests
{
    [Fact]
    public void A_charge_below_nothing_and_a_bird_without_weight_are_refused_by_name()
    {
        Refused(() => new PlantTerms { PerBird = Money.Of(-1) }, "PerBird");
        Refused(() => new PlantTerms { FewestBirds = -1 }, "FewestBirds");
        Refused(() => new PlantTerms { MostBirds = 0 }, "MostBirds");
        Refused(() => new PlantTerms { LightestBird = Mass.Zero }, "LightestBird");
        Refused(() => new PlantTerms { HeaviestBird = Mass.FromPounds(-4) }, "HeaviestBird");
        new PlantTerms { HeaviestBird = Mass.FromPounds(9) }.HeaviestBird!.Value.ToString(System.Globalization.CultureInfo.InvariantCulture).Should().Be("9 lb");
    }

    private static void Refused(Func<PlantTerms> making, string name) => making.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(name);
}
