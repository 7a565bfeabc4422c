using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Flock;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Feeding;

/// <summary>What a batch ate against what was forecast to the same day, with the same waste, temperatures and pasture; and whether that corrects the rest.</summary>
public sealed class FarmFactor
{
    /// <summary>Earlier records are mostly noise of the first weeks.</summary>
    internal const double FirstDays = 21;

    /// <summary>Later ones were not tried.</summary>
    internal const double LastTestedDays = 35;

    private FarmFactor(FeedRecord record, double expectedKilograms, Interval<double>? interval, string? reason)
    {
        (Record, Expected, Ratio, Interval, Reason) = (record, Mass.FromKilograms(expectedKilograms), record.Eaten.Kilograms / expectedKilograms, interval, reason);
    }

    /// <summary>How the factor was found and how well it does.</summary>
    public static ModelInfo Model { get; } = new(
        "farm-factor",
        "One factor from feed eaten so far",
        "F(t) = k Fp(t) for t after n, k = eaten(n)/Fp(n)",
        [
            new ModelSymbol("F", "feed eaten to an age", "kg"),
            new ModelSymbol("Fp", "the same by the default model", "kg"),
            new ModelSymbol("k", "the farm's factor", "-"),
            new ModelSymbol("n", "age of the record, 21 d or more", "d"),
            new ModelSymbol("t", "age", "d"),
        ],
        [FeedingSources.FeedTables],
        "Six printed tables, feed from the record's week to 9 weeks: 2.4 % off in the mean with a record of three weeks (4.4 % without any), 3.4 % of four weeks, 5.0 % of five; 13.8 % at worst. Models that rest on W^0.75 are damaged by a factor (7 to 16 % and worse), and so are slow birds by any: none is applied there.",
        HowKnown.Derived,
        [new ValidityRange("age of the record", FirstDays, LastTestedDays, "d")]);

    /// <summary>What was written down.</summary>
    public FeedRecord Record { get; }

    /// <summary>What the batch should have eaten by then.</summary>
    public Mass Expected { get; }

    /// <summary>Eaten over expected: above 1 the birds ate, or spilt, more than forecast.</summary>
    public double Ratio { get; }

    /// <summary>How far the factor of the rest of the batch's life may lie from it; null where it is not applied.</summary>
    public Interval<double>? Interval { get; }

    /// <summary>Why the forecast is not corrected by it; null where it is.</summary>
    public string? Reason { get; }

    /// <summary>Whether the forecast is corrected by it.</summary>
    public bool IsApplied => Reason is null;

    /// <summary>As in <c>1.044 (452 of 433 kg at 28 d; 996 of 955 lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Ratio:0.000} ({Record.Eaten.Kilograms:0} of {Expected.Kilograms:0} kg at {Record.Age}; {Record.Eaten.Pounds:0} of {Expected.Pounds:0} lb)");

    internal static FarmFactor Of(FeedRecord record, double expectedKilograms, FeedingConditions conditions, double normal, double level)
    {
        string? reason = conditions.Type != BirdType.Fast ? "a record of slow birds does not improve the rest of their forecast"
            : !conditions.TakesFarmFactor ? "the weekly error of this model slides: a record would make the rest worse"
            : record.Age.Days < FirstDays ? "a record before three weeks of age does not improve the rest"
            : null;
        double ratio = record.Eaten.Kilograms / expectedKilograms;
        double error = Math.Exp(normal * RestError(record.Age.Days));
        return new(record, expectedKilograms, reason is null ? Interval<double>.Of(ratio / error, ratio * error, level) : null, reason);
    }

    /// <summary>
    /// Standard error of the logarithm of the feed after a corrected record: the root mean square over six tables, widened by a fifth or more because the model was
    /// chosen on them, straight lines between 3, 4 and 5 weeks, flat after.
    /// </summary>
    internal static double RestError(double recordDays)
    {
        double weeks = Math.Clamp(recordDays / 7, 3, 5);
        return weeks < 4 ? 0.04 + (0.02 * (weeks - 3)) : 0.06 + (0.02 * (weeks - 4));
    }
}
