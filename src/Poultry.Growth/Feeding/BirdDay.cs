namespace Poultry.Growth.Feeding;

/// <summary>A day in the life of a bird of one sex, as the models see it: weights in g at its start, its middle and its end, the air's temperature, and the age in its middle.</summary>
internal readonly record struct BirdDay(bool Male, double StartGrams, double MiddleGrams, double EndGrams, double Celsius, double AgeDays)
{
    public double Kilograms => MiddleGrams / 1000;
}
