#pragma warning disable CA1051, CA1052, CA1067, CA1711, CA1815, CA2211, CA1000 // Each type below breaks a rule on purpose.
using System.Globalization;
using Mono.Cecil;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>The checks of the surface see what they should: one small offender for each.</summary>
public class SurfaceCheckTests
{
    [Theory]
    [InlineData("days", true)]
    [InlineData("ageDays", true)]
    [InlineData("KilogramsPerDay", true)]
    [InlineData("perDay", true)]
    [InlineData("PercentPerDay", true)]
    [InlineData("confidenceLevel", true)]
    [InlineData("parameters", true)]
    [InlineData("weight", false)]
    [InlineData("dayOfWeighing", false)]
    [InlineData("rate", false)]
    [InlineData("sublevel", false)]
    [InlineData("low", false)]
    public void A_name_says_its_unit_or_does_not(string name, bool says) => UnitNames.SayUnitOrMeaning("Crate", name).Should().Be(says);

    [Fact]
    public void Bare_numbers_are_found_wherever_they_hide() =>
        BareNumbers.Of(typeof(Numbers)).Select(number => number.Name).Should().BeEquivalentTo(
            "Property", "Field", "Result", "single", "spans", "nullable", "nested", "made");

    [Fact]
    public void What_can_be_changed_is_found() =>
        SurfaceTests.Changeable(typeof(Changing)).Should().BeEquivalentTo($"{typeof(Changing)}.Field", $"{typeof(Changing)}.Property");

    [Fact]
    public void Shared_state_is_found() =>
        SurfaceTests.SharedState(typeof(Sharing)).Should().BeEquivalentTo($"{typeof(Sharing)}.Count", $"{typeof(Sharing)}.Names");

    [Fact]
    public void An_open_class_is_found()
    {
        SurfaceTests.IsOpen(typeof(Changing)).Should().BeTrue();
        SurfaceTests.IsOpen(typeof(Numbers)).Should().BeFalse();
    }

    [Fact]
    public void A_loose_struct_is_found()
    {
        SurfaceTests.IsLooseStruct(typeof(LooseStruct)).Should().BeTrue();
        SurfaceTests.IsLooseStruct(typeof(UnequalStruct)).Should().BeTrue();
        SurfaceTests.IsLooseStruct(typeof(Age)).Should().BeFalse();
    }

    [Fact]
    public void A_validated_positional_record_is_found()
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(typeof(SurfaceCheckTests).Assembly.Location);

        module.GetTypes().Where(type => type.DeclaringType?.Name == nameof(SurfaceCheckTests))
            .Where(SurfaceTests.IsValidatedPositionalRecord).Select(type => type.Name)
            .Should().BeEquivalentTo(nameof(Checked));
    }

    [Fact]
    public void A_type_of_MathNet_is_found_inside_another() =>
        Surface.Mentioned(typeof(Showing)).Should().Contain(typeof(MathNet.Numerics.Complex32));

    public sealed class Numbers
    {
        public readonly double Field;

        public Numbers(double made) => Field = made;

        public Interval<double>? Property { get; }

        public double Result(double[] single, ReadOnlySpan<double> spans, double? nullable, IReadOnlyList<(int, double)> nested) => Field;

        public int Counted(int birds, string name) => birds;

        private double Hidden(double hidden) => hidden;
    }

    public class Changing
    {
        public int Field;

        public int Property { get; set; }

        public int Fixed { get; init; }
    }

    public static class Sharing
    {
        public static int Count;
        public static readonly Dictionary<string, string> Names = [];
        public static readonly string Fixed = 1.ToString(CultureInfo.InvariantCulture);
        public const int Constant = 1;

        public static Func<int, int> Cached => static x => x + 1;
    }

    public struct LooseStruct : IEquatable<LooseStruct>
    {
        public readonly bool Equals(LooseStruct other) => true;
    }

    public readonly struct UnequalStruct;

    public sealed record Plain(double Kilograms, string Name);

    public sealed record Checked(double Kilograms)
    {
        public double Kilograms { get; init; } = double.IsFinite(Kilograms) ? Kilograms : throw new ArgumentOutOfRangeException(nameof(Kilograms));
    }

    public sealed class Showing
    {
        public IReadOnlyList<MathNet.Numerics.Complex32[]>? Shown { get; }
    }
}
