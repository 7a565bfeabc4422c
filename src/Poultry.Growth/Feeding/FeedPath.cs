using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Feeding;

/// <summary>From weights to feed, day by day: everything that does not depend on the weights is worked out once.</summary>
internal sealed class FeedPath
{
    /// <summary>Mean weights for which a body composition is known, with room for the heavier and the lighter sex.</summary>
    public const double LeastKilograms = BodyComposition.LeastGrams / 800, MostKilograms = BodyComposition.MostGrams / 1200;

    private readonly EnergyModel model;
    private readonly Sex sex;
    private readonly double startDays;
    private readonly Day[] days;

    public FeedPath(FeedingPlan plan, FeedingConditions conditions, double startDays, int count)
    {
        (model, sex, this.startDays) = (conditions.Model, conditions.Sex, startDays);
        double moveOut = conditions.Temperatures.MoveOut?.Days ?? double.PositiveInfinity;
        days = new Day[count];
        for (int i = 0; i < count; i++)
        {
            double middle = startDays + i + 0.5;
            bool outside = middle >= moveOut;
            double eatenShare = outside ? 1 - conditions.Pasture.EnergyShare.Fraction : 1;
            int phase = plan.IndexAt(middle);
            days[i] = new Day(
                conditions.Temperatures.Celsius(middle),
                outside ? conditions.Ranging.Fraction : 0,
                eatenShare / (plan.Phases[phase].KilocaloriesPerKilogram * (1 - conditions.Waste.Fraction)),
                phase,
                MaleFactor(startDays + i),
                MaleFactor(middle),
                MaleFactor(startDays + i + 1));
        }
    }

    public int Count => days.Length;

    public double Celsius(int day) => days[day].Celsius;

    public int Phase(int day) => days[day].Phase;

    /// <summary>Energy and feed of the mean bird on a day, from the flock's mean weights in kg.</summary>
    public FeedParts On(int day, double start, double middle, double end)
    {
        Day at = days[day];
        double age = startDays + day + 0.5;
        EnergyParts energy;
        if (sex == Sex.Mixed)
        {
            EnergyParts male = model.On(new(true, 1000 * start * at.StartMale, 1000 * middle * at.MiddleMale, 1000 * end * at.EndMale, at.Celsius, age));
            EnergyParts female = model.On(new(
                false, 1000 * start * (2 - at.StartMale), 1000 * middle * (2 - at.MiddleMale), 1000 * end * (2 - at.EndMale), at.Celsius, age));
            energy = EnergyParts.Mean(male, female);
        }
        else
        {
            energy = model.On(new(sex == Sex.Male, 1000 * start, 1000 * middle, 1000 * end, at.Celsius, age));
        }

        double ranging = at.Ranging * energy.Maintenance;
        return new(energy, ranging, (energy.Total + ranging) * at.KilogramsPerKilocalorie);
    }

    /// <summary>Feed of every day in kg a bird, from weights in kg at its ends; in the middle of a day their geometric mean is taken.</summary>
    /// <returns>False where a weight lies outside what a body composition is known for, or falls so fast that a day asks for no feed.</returns>
    public bool Feed(ReadOnlySpan<double> kilograms, Span<double> feedKilograms)
    {
        foreach (double weight in kilograms)
        {
            if (!(weight > LeastKilograms && weight < MostKilograms))
            {
                return false;
            }
        }

        for (int i = 0; i < Count; i++)
        {
            feedKilograms[i] = On(i, kilograms[i], Math.Sqrt(kilograms[i] * kilograms[i + 1]), kilograms[i + 1]).FeedKilograms;
            if (feedKilograms[i] <= 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A cockerel's weight over the flock's mean; a pullet's is 2 less it.</summary>
    private static double MaleFactor(double ageDays) => 2 / (1 + SexDimorphism.FemaleRatio(ageDays));

    private readonly record struct Day(
        double Celsius, double Ranging, double KilogramsPerKilocalorie, int Phase, double StartMale, double MiddleMale, double EndMale);
}
