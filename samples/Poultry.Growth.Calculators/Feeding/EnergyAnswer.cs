using Poultry.Growth.Evidence;
using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Calculators.Feeding;

/// <summary>What a bird needs by the model asked for, and by the others.</summary>
internal sealed class EnergyAnswer
{
    /// <summary>The standard house is at 21 °C by then.</summary>
    private static readonly Age UsualAge = Primitives.Age.FromDays(42);

    public required EnergyQuestion Question { get; init; }

    public required Age Age { get; init; }

    public required Temperature Temperature { get; init; }

    public required SpecificEnergy Diet { get; init; }

    public required EnergyNeed Need { get; init; }

    public required Estimate<Mass> Feed { get; init; }

    /// <summary>Every model that can answer, in the library's order.</summary>
    public required IReadOnlyList<EnergyNeed> ByModel { get; init; }

    public IReadOnlyList<Caution> Cautions =>
    [
        .. Need.Cautions,
        .. Question.Age is null ? [new Caution("age-assumed", "No age was given: 42 d is taken, when the standard house is at 21 °C (70 °F) and the usual feed has 3200 kcal/kg.")] : Array.Empty<Caution>(),
        .. Question.Diet is null ? [FeedingPlan.UsualDiets.Caution!] : Array.Empty<Caution>(),
        new Caution("bird-grows-as-its-type", "Every model speaks of birds that eat as they like: for birds held short of feed, sick or panting it asks too much."),
    ];

    public IReadOnlyList<Citation> Sources => Need.Model.Model.Citations;

    public static EnergyAnswer To(EnergyQuestion question)
    {
        Age age = question.Age ?? UsualAge;
        Temperature temperature = question.Temperature ?? Temperatures.StandardHouse.At(age);
        SpecificEnergy diet = question.Diet ?? FeedingPlan.UsualDiets.Phases.Last(phase => phase.From <= age).Energy;
        EnergyNeed Of(EnergyModel model) => model.Need(question.Sex, question.Weight, question.Gain, temperature, age);
        EnergyNeed need = Of(question.Model);
        return new()
        {
            Question = question,
            Age = age,
            Temperature = temperature,
            Diet = diet,
            Need = need,
            Feed = need.FeedPerDay(diet, question.Level),
            ByModel = [.. EnergyModel.All.Where(model => question.Age is not null || !EnergyModels.NeedsAge(model)).Select(Of)],
        };
    }
}
