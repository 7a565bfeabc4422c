using Poultry.Growth.Evidence;

namespace Poultry.Growth.Feeding;

/// <summary>Protein and fat as powers of live weight through the two ends of a measured range.</summary>
internal sealed class PowerComposition : BodyComposition
{
    private const double LowGrams = 56, HighGrams = 4184;
    private const double LowProtein = 0.154, HighProtein = 0.182;
    private const double LowFat = 0.053, HighFat = 0.101;

    public static ModelInfo Info { get; } = new(
        "composition-caldas",
        "Body protein and fat, one composition for both sexes",
        "P = 0.154 W (0.182/0.154)^x; L = 0.053 W (0.101/0.053)^x; x = ln(W/56)/ln(4184/56)",
        [new("P", "body protein", "g"), new("L", "body fat", "g"), new("W", "live weight", "g"), new("x", "how far from the light end to the heavy one", "-")],
        [FeedingSources.Caldas2019],
        "The ends of the ranges are measured (151 birds, 1 to 60 d); that protein and fat rise between them as powers of weight, and together, is assumed. Birds of 2024 hold more fat above 2 kg than these figures.",
        HowKnown.Derived,
        [new ValidityRange("live weight", 0.056, 4.184, "kg")]);

    public override ModelInfo Model => Info;

    internal override (double Protein, double Fat) At(double grams)
    {
        double x = Math.Log(grams / LowGrams) / Math.Log(HighGrams / LowGrams);
        return (grams * LowProtein * Math.Pow(HighProtein / LowProtein, x), grams * LowFat * Math.Pow(HighFat / LowFat, x));
    }
}
