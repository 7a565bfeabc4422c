using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>The share of birds with dead tenders by its quantiles, tabulated once a day of killing.</summary>
internal sealed class LesionShares
{
    private const int Cells = 400;

    private readonly double[] quantiles = new double[Cells];

    public LesionShares(BatchPrevalence lesions)
    {
        for (int i = 0; i < Cells; i++)
        {
            quantiles[i] = lesions.Quantile(Probability.FromFraction((i + 0.5) / Cells)).Share.Fraction;
        }
    }

    /// <summary>Of the birds of a plan, killed at an age.</summary>
    public static LesionShares Of(BatchPlan plan, Age age) => new(PrevalenceOf(plan.Lesions, plan, age, plan.Growth.MeanAt(age).Value));

    /// <summary>By one model or another, for birds of a weight.</summary>
    public static BatchPrevalence PrevalenceOf(PlanningRisk risk, BatchPlan plan, Age age, Mass weight) => risk.For(new()
    {
        KillAge = age, Sex = plan.Growth.Prior.Sex, IsOutdoor = plan.Feeding.Temperatures.MoveOut is not null, LiveWeight = weight,
    });

    /// <summary>The share below which flocks lie with a probability, by the middle of its cell.</summary>
    public double At(double probability) => quantiles[(int)(probability * Cells)];
}
