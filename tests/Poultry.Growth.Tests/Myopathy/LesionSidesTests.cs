using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Myopathy;

/// <summary>Muscles and birds where there are next to none: 1 less next to nothing is 1.</summary>
public class LesionSidesTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1e-300)]
    [InlineData(1e-17)]
    [InlineData(1e-12)]
    [InlineData(1e-8)]
    public void Of_few_lesions_each_bird_has_its_limit_of_sides(double muscles) =>
        LesionSides.Usual.SidesPerBird(MusclePrevalence.Of(Probability.FromFraction(muscles))).Should().BeApproximately(1.5, 1e-7);
}
