using System.Collections.Immutable;
using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>A rule that moves a feed conversion to a reference weight, since heavier birds convert worse: FCR - k (BW - BWref) / 0.1 kg.</summary>
/// <remarks>Two rules are in use and give different figures: name the rule beside every corrected figure.</remarks>
public sealed class WeightCorrection
{
    private const double StepKilograms = 0.1;

    private readonly double referenceKilograms, perStep;

    private WeightCorrection(ModelInfo model, double referenceKilograms, double perStep) =>
        (Model, this.referenceKilograms, this.perStep) = (model, referenceKilograms, perStep);

    /// <summary>To 2.5 kg by 0.02 per 100 g, for 2.3 to 2.7 kg.</summary>
    public static WeightCorrection To2500Grams { get; } = new(
        Info(
            "weight-correction-2500g",
            "Conversion corrected to 2.5 kg",
            "FCR_c = FCR - 0.02 (BW - 2.5) / 0.1",
            new Citation("Maertens2016", "Maertens 2016, Flanders Research Institute for Agriculture (ILVO)", HowKnown.Secondary),
            "Stated for 2.3 to 2.7 kg. It exists because the older rule gives absurd figures for heavy birds.",
            [new ValidityRange("live weight", 2.3, 2.7, "kg")]),
        2.5,
        0.02);

    /// <summary>The old rule of the trade: to 1.5 kg by 0.04 per 100 g.</summary>
    public static WeightCorrection To1500Grams { get; } = new(
        Info(
            "weight-correction-1500g",
            "Conversion corrected to 1.5 kg, the old rule",
            "FCR_c = FCR - 0.04 (BW - 1.5) / 0.1",
            new Citation("Trade", "Custom of the trade", HowKnown.CommonPractice, "reference 1.5 kg, in places 1.4 kg"),
            "No range is stated. At 3 kg it takes 0.60 off a conversion of 1.60: use the rule for 2.5 kg there.",
            []),
        1.5,
        0.04);

    /// <summary>Both rules.</summary>
    public static IReadOnlyList<WeightCorrection> All { get; } = ImmutableArray.Create(To2500Grams, To1500Grams);

    /// <summary>What it is and where it comes from.</summary>
    public ModelInfo Model { get; }

    /// <summary>The weight to which it corrects.</summary>
    public Mass Reference => Mass.FromKilograms(referenceKilograms);

    /// <summary>The conversion as if the birds had been sold at the reference weight.</summary>
    /// <param name="conversion">On any basis; the corrected figure stands on the same.</param>
    /// <param name="meanLiveWeight">Mean live weight sold, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is not above 0.</exception>
    public WeightCorrectedConversion Correct(FeedConversion conversion, Mass meanLiveWeight)
    {
        ArgumentNullException.ThrowIfNull(conversion);
        double kilograms = Require.Positive(meanLiveWeight.Kilograms, "kg", nameof(meanLiveWeight));
        double ratio = conversion.Ratio - (perStep * (kilograms - referenceKilograms) / StepKilograms);
        return new(this, conversion, ratio, Caution(kilograms));
    }

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private Caution? Caution(double kilograms) => Model.Ranges is [var range]
        ? range.Contains(kilograms) ? null : new("weight-correction-out-of-range", string.Create(
            CultureInfo.InvariantCulture, $"The rule for 2.5 kg is stated for {range}; these birds weighed {WeightText.Of(kilograms)}."))
        : kilograms > 2 ? new("weight-correction-old-rule", "The old rule for 1.5 kg gives absurd figures for heavy birds; compare by the rule for 2.5 kg, or uncorrected at like weights.") : null;

    private static ModelInfo Info(string id, string name, string equation, Citation source, string accuracy, IReadOnlyList<ValidityRange> ranges) => new(
        id,
        name,
        equation,
        [new("FCR_c", "corrected conversion", "-"), new("FCR", "feed conversion", "-"), new("BW", "mean live weight sold", "kg")],
        [source],
        accuracy,
        source.HowKnown,
        ranges);
}
