using CsCheck;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Feeding;

public class EnergyModelTests
{
    private static readonly Age Fortyfive = Age.FromDays(45);

    [Theory]
    [InlineData(Sex.Male)]
    [InlineData(Sex.Female)]
    public void The_table_of_body_composition_is_its_equation(Sex sex)
    {
        SplitComposition body = (SplitComposition)BodyComposition.Cobb700(sex, Mass.FromGrams(42));

        for (double grams = 10.5; grams < 12_000; grams *= 1.0137)
        {
            double solved = body.Solve(grams);
            body.At(grams).Protein.Should().BeApproximately(solved, 1e-6 * solved, "{0} g", grams);
        }
    }

    [Fact]
    public void Parts_of_the_body_never_exceed_it_and_grow_with_it() => Gen.Double[0.02, 10].Sample(kilograms =>
    {
        foreach (BodyComposition body in new[] { BodyComposition.Cobb700(Sex.Male, Mass.FromGrams(42)), BodyComposition.Cobb700(Sex.Female, Mass.FromGrams(38)), BodyComposition.Caldas2019 })
        {
            (double protein, double fat) = body.At(1000 * kilograms);
            (double more, double fatter) = body.At(1010 * kilograms);
            (protein + fat).Should().BeInRange(0.15 * 1000 * kilograms, 0.5 * 1000 * kilograms);
            more.Should().BeGreaterThan(protein);
            fatter.Should().BeGreaterThan(fat);
        }
    });

    [Fact]
    public void Need_is_positive_and_continuous_over_weight_and_temperature()
    {
        foreach (EnergyModel model in EnergyModel.All)
        {
            foreach (double kilograms in new[] { 0.042, 0.3, 1, 3, 5 })
            {
                double before = double.NaN;
                for (double celsius = 4; celsius <= 36; celsius += 0.25)
                {
                    double need = Need(model, kilograms, celsius);
                    need.Should().BePositive();
                    if (!double.IsNaN(before))
                    {
                        (need / before).Should().BeInRange(0.94, 1.06, "{0}, {1} kg, {2} °C", model, kilograms, celsius);
                    }

                    before = need;
                }
            }
        }
    }

    [Fact]
    public void Mixed_is_the_mean_of_the_sexes_and_pounds_are_kilograms()
    {
        EnergyNeed Of(Sex sex, Mass weight) => EnergyModel.HeatProduction.Need(sex, weight, MassFlow.FromGramsPerDay(60), Temperature.FromDegreesFahrenheit(68), Fortyfive);
        double mean = (Kilocalories(Of(Sex.Male, Mass.FromPounds(4))) + Kilocalories(Of(Sex.Female, Mass.FromPounds(4)))) / 2;

        Kilocalories(Of(Sex.Mixed, Mass.FromKilograms(4 * 0.45359237))).Should().BeApproximately(mean, 1e-9);
    }

    [Fact]
    public void Outside_what_was_measured_a_need_is_cautioned_and_beyond_sense_refused()
    {
        EnergyNeed Need(double kilograms, double celsius) => EnergyModel.HeatProduction.Need(
            Sex.Male, Mass.FromKilograms(kilograms), MassFlow.FromGramsPerDay(50), Temperature.FromDegreesCelsius(celsius), Fortyfive);

        Need(2, 20).Cautions.Should().BeEmpty();
        Need(5, 2).Cautions.Select(caution => caution.Code).Should().Equal("outside-live-weight", "outside-temperature");
        FluentActions.Invoking(() => Need(20, 20)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*12000 g*");
        FluentActions.Invoking(() => Need(2, 70)).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*-20 to 50 °C*");
        FluentActions.Invoking(() => BodyComposition.Cobb700(Sex.Mixed, Mass.FromGrams(42))).Should().Throw<ArgumentOutOfRangeException>().WithMessage("*Male or Female*");
    }

    [Fact]
    public void A_need_prints_itself() =>
        EnergyModel.HeatProduction.Need(Sex.Male, Mass.FromKilograms(2), MassFlow.FromGramsPerDay(95), Temperature.FromDegreesCelsius(5), Fortyfive).ToString()
            .Should().Be("630 kcal/d (heat 366, temperature +71, gain 193)");

    private static double Kilocalories(EnergyNeed need) => Calories.PerDay(need.Total);

    private static double Need(EnergyModel model, double kilograms, double celsius) => Kilocalories(
        model.Need(Sex.Female, Mass.FromKilograms(kilograms), MassFlow.FromGramsPerDay(15), Temperature.FromDegreesCelsius(celsius), Fortyfive));
}
