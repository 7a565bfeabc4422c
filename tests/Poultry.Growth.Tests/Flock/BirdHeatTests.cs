using Poultry.Growth.Flock;

namespace Poultry.Growth.Tests.Flock;

public class BirdHeatTests
{
    [Fact]
    public void Heat_of_a_bird_outside_the_measured_weights_says_so()
    {
        Temperature mild = Temperature.FromDegreesCelsius(20);

        BirdHeat.ChepeteXin2001.At(Mass.FromKilograms(3), mild).Cautions.Should().NotContain(caution => caution.Code == "bird-heat-outside-range");
        BirdHeat.ChepeteXin2001.At(Mass.FromKilograms(3.1), mild).Cautions.Single(caution => caution.Code == "bird-heat-outside-range")
            .Text.Should().Be("The heat of birds was measured from 100 g (3.53 oz) to 3 kg (6.61 lb); this weight lies outside.");
    }
}
