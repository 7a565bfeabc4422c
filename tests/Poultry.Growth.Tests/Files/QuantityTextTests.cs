using Poultry.Growth.Files;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Files;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("2.6kg", 2.6)]
    [InlineData(" 2.6 kg ", 2.6)]
    [InlineData("2.6KG", 2.6)]
    [InlineData("920g", 0.92)]
    [InlineData("5.7lb", 5.7 * 0.45359237)]
    [InlineData("3oz", 3 * 0.45359237 / 16)]
    [InlineData("5lb11oz", 5.6875 * 0.45359237)]
    [InlineData("5 lb 11 oz", 5.6875 * 0.45359237)]
    [InlineData("5lb 11.2oz", 5.7 * 0.45359237)]
    [InlineData(".5kg", 0.5)]
    [InlineData("0g", 0)]
    public void A_mass_is_a_number_and_its_unit(string text, double kilograms)
    {
        QuantityText.TryMass(text, out Mass mass, out string? problem).Should().BeTrue(problem);
        mass.Kilograms.Should().BeApproximately(kilograms, 1e-12);
    }

    [Theory]
    [InlineData("2.6", "\"2.6\" has no unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("2,6kg", "\"2,6kg\" has a decimal comma; write \"2.6kg\"")]
    [InlineData("", "\"\" is empty; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("kg", "\"kg\" does not start with a number; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("2.6st", "\"2.6st\" has an unknown unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("5%", "\"5%\" has an unknown unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("-2kg", "\"-2kg\" is below 0; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("1e3g", "\"1e3g\" has an exponent; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("1E-3g", "\"1E-3g\" has an exponent; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("NaNkg", "\"NaNkg\" is not a finite number; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("Infinity kg", "\"Infinity kg\" is not a finite number; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("2.6.1kg", "\"2.6.1kg\" is not a number; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("5lb16oz", "\"5lb16oz\" is not whole lb and oz below 16; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("5.5lb3oz", "\"5.5lb3oz\" is not whole lb and oz below 16; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("5lb3", "\"5lb3\" is not whole lb and oz below 16; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    [InlineData("2kg3g", "\"2kg3g\" goes on after its unit; expected a weight with g, kg, lb or oz, as in 2.6kg or 5lb11oz")]
    public void What_is_no_mass_is_refused_with_its_reason(string text, string reason)
    {
        QuantityText.TryMass(text, out Mass mass, out string? problem).Should().BeFalse();
        problem.Should().Be(reason);
        mass.Kilograms.Should().Be(0);
    }

    [Fact]
    public void A_number_too_large_for_a_double_is_refused()
    {
        QuantityText.TryMass(new string('9', 400) + "kg", out _, out string? problem).Should().BeFalse();
        problem.Should().Contain("is too large");
    }

    [Theory]
    [InlineData("42d", 42)]
    [InlineData("8 wk", 56)]
    [InlineData("2.5wk", 17.5)]
    public void An_age_is_in_days_or_weeks(string text, double days)
    {
        QuantityText.TryAge(text, out Age age, out _).Should().BeTrue();
        age.Days.Should().Be(days);
    }

    [Fact]
    public void A_bare_age_is_refused_with_the_units_accepted()
    {
        QuantityText.TryAge("42", out _, out string? problem).Should().BeFalse();
        problem.Should().Be("\"42\" has no unit; expected an age with d or wk, as in 42d");
    }

    [Fact]
    public void A_percentage_is_a_fraction()
    {
        QuantityText.TryPercent("5 %", out double fraction, out _).Should().BeTrue();
        fraction.Should().BeApproximately(0.05, 1e-15);
        QuantityText.TryPercent("0.05", out _, out string? problem).Should().BeFalse();
        problem.Should().Be("\"0.05\" has no unit; expected a share with %, as in 5%");
    }

    [Fact]
    public void A_date_is_iso()
    {
        QuantityText.TryDate("2027-04-12", out DateOnly date, out _).Should().BeTrue();
        date.Should().Be(new DateOnly(2027, 4, 12));
        QuantityText.TryDate("12.4.2027", out _, out string? problem).Should().BeFalse();
        problem.Should().Be("\"12.4.2027\" is not a date; expected year, month and day, as in 2027-04-12");
    }

    [Fact]
    public void Units_of_weight_are_known_by_their_symbols()
    {
        QuantityText.TryWeightUnit("lb_oz", out WeightUnit unit, out _).Should().BeTrue();
        unit.Should().Be(WeightUnit.PoundAndOunce);
        QuantityText.TryWeightUnit("stone", out _, out string? problem).Should().BeFalse();
        problem.Should().Be("\"stone\" is no unit of weight; expected g, kg, lb, oz or lb_oz");
    }

    [Theory]
    [InlineData(2.6, WeightUnit.Kilogram, 2, "2.60 kg")]
    [InlineData(0.9204, WeightUnit.Gram, 0, "920 g")]
    [InlineData(2.6, WeightUnit.Pound, 1, "5.7 lb")]
    [InlineData(0.1, WeightUnit.Ounce, 1, "3.5 oz")]
    [InlineData(2.58, WeightUnit.PoundAndOunce, 0, "5 lb 11 oz")]
    [InlineData(2.72, WeightUnit.PoundAndOunce, 0, "6 lb 0 oz")]
    [InlineData(-0.1, WeightUnit.PoundAndOunce, 1, "-0 lb 3.5 oz")]
    public void A_mass_is_written_in_the_unit_asked_for(double kilograms, WeightUnit unit, int decimals, string text) =>
        QuantityText.Write(Mass.FromKilograms(kilograms), unit, decimals).Should().Be(text);

    [Fact]
    public void Too_many_digits_are_refused() =>
        FluentActions.Invoking(() => QuantityText.Write(Mass.FromKilograms(1), WeightUnit.Gram, 12))
            .Should().Throw<ArgumentOutOfRangeException>().WithMessage("12 is not allowed; expected 0 to 9.*");
}
