using Poultry.Growth.Carcass;
using Poultry.Growth.Feeding;
using Poultry.Growth.Files;
using Poultry.Growth.Fitting;
using Poultry.Growth.Planning;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Architecture;

/// <summary>An object prints itself in one honest line, not as the name of its type.</summary>
public class PrintTests
{
    /// <summary>Types that need no line of their own, each with the reason.</summary>
    private static readonly Dictionary<Type, string> Silent = new()
    {
        [typeof(BasisOf<,,,>)] = "a name for the compiler: nobody holds an object",
        [typeof(Hot)] = "likewise",
        [typeof(Chilled)] = "likewise",
        [typeof(Packed)] = "likewise",
        [typeof(With)] = "likewise",
        [typeof(Without)] = "likewise",
        [typeof(FeedForecastOptions)] = "how something is done, and no result",
        [typeof(ProjectionOptions)] = "likewise",
        [typeof(HarvestOptions)] = "likewise",
        [typeof(WeighInFileOptions)] = "likewise",
        [typeof(FittedCurveRecord)] = "plain numbers for a serialiser",
        [typeof(GrowthFitRecord)] = "likewise",
        [typeof(WeighInRecord)] = "likewise",
    };

    [Fact]
    public void Every_object_prints_itself() =>
        Libraries.PublicTypes.Where(IsMute).Where(type => !Silent.ContainsKey(type)).ShouldBeNone("a public object has a ToString in one line, or a reason in the list");

    [Fact]
    public void The_list_of_the_silent_names_no_type_that_speaks() => Silent.Keys.Where(type => !IsMute(type)).ShouldBeNone();

    [Fact]
    public void An_object_that_prints_its_type_is_found()
    {
        IsMute(typeof(Mute)).Should().BeTrue();
        IsMute(typeof(MuteStruct)).Should().BeTrue();
        IsMute(typeof(Spoken)).Should().BeFalse();
        IsMute(typeof(Heir)).Should().BeFalse();
        IsMute(typeof(IDisposable)).Should().BeFalse();
    }

    /// <summary>Whether an object of the type prints as the framework prints it.</summary>
    private static bool IsMute(Type type) =>
        type is { IsEnum: false, IsInterface: false, IsAbstract: false, IsByRefLike: false }
        && type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType!.Assembly == typeof(object).Assembly;

    private sealed class Mute;

    private readonly struct MuteStruct;

    private class Spoken
    {
        public override string ToString() => "spoken";
    }

    private sealed class Heir : Spoken;
}
