using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Primitives;

/// <summary>Figures with bounds print in one line; weights in kg and in lb, by 1 lb = 0.45359237 kg.</summary>
public class RangePrintTests
{
    [Fact]
    public void A_weight_prints_in_both_units() => Estimated(2.5, 2.4, 2.6).ToString().Should().Be("2.5 kg (5.512 lb; 90 %: 2.4 to 2.6 kg, 5.291 to 5.732 lb)");

    [Fact]
    public void An_open_bound_is_open_in_both_units() => Estimated(2.5, null, 2.6).ToString().Should().Be("2.5 kg (5.512 lb; 90 %: open to 2.6 kg, open to 5.732 lb)");

    [Fact]
    public void The_feed_of_a_batch_prints_in_full() =>
        Estimated(18_634.2, 9_999, 21_400).ToString().Should().Be("18634 kg (41081 lb; 90 %: 9999 to 21400 kg, 22044 to 47179 lb)");

    [Fact]
    public void What_is_no_weight_prints_once()
    {
        Interval<Age>.Of(Age.FromDays(45.27), null, 0.9).ToString().Should().Be("45.27 to open d (90 %)");
        Interval<Mass>.Of(Mass.FromGrams(2400), Mass.FromGrams(2600), 0.95).ToString().Should().Be("2.4 to 2.6 kg (5.291 to 5.732 lb; 95 %)");
        Interval<double>.Of(1.5, 20_000, 0.9).ToString().Should().Be("1.5 to 20000 (90 %)");
        LikelyRange<Probability>.Of(Probability.FromPercent(70), Probability.FromPercent(72.5), Probability.FromPercent(75)).ToString().Should().Be("72.5 % (70 % to 75 %)");
    }

    [Fact]
    public void A_time_prints_in_days() =>
        Interval<Duration>.Of(Duration.FromHours(-36), Duration.FromDays(2), 0.9).ToString().Should().Be("-1.5 to 2 d (90 %)");

    [Fact]
    public void A_bound_that_is_not_a_number_is_refused()
    {
        FluentActions.Invoking(() => Interval<double>.Of(double.NaN, 1, 0.9)).Should().Throw<ArgumentException>().WithParameterName("low").WithMessage("*not a number*");
        FluentActions.Invoking(() => Interval<double>.Of(null, double.NaN, 0.9)).Should().Throw<ArgumentException>().WithParameterName("high").WithMessage("*not a number*");
    }

    private static Estimate<Mass> Estimated(double kilograms, double? low, double high) => new(
        Mass.FromKilograms(kilograms),
        Interval<Mass>.Of(low is { } bound ? Mass.FromKilograms(bound) : null, Mass.FromKilograms(high), 0.9),
        CurveFamilies.Gompertz.Model,
        []);
}
