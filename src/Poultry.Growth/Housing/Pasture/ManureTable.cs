using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Housing;

/// <summary>Excretion of a finished bird by a table of engineers: for comparison at the table's own age, never a default, and refused elsewhere.</summary>
public sealed class ManureTable
{
    private readonly double days;

    private ManureTable(double days, double nitrogenKilograms, double phosphorusKilograms, double potassiumKilograms, ModelInfo model)
    {
        (this.days, Model) = (days, model);
        (Nitrogen, Phosphorus, Potassium) = (Mass.FromKilograms(nitrogenKilograms), Mass.FromKilograms(phosphorusKilograms), Mass.FromKilograms(potassiumKilograms));
    }

    /// <summary>ASAE D384.2, broiler of 48 d, as recalled.</summary>
    public static ManureTable Asae2005 { get; } = new(48, 0.053, 0.016, 0.031, Describe(
        "manure-asae", "Manure of a finished broiler, engineers' standard", "ASAED384.2", "ASAE D384.2, March 2005 (R2019)", "Table 1, recalled; diets of 2002; the standard itself prefers a feed balance"));

    /// <summary>NRCS field handbook, finished broiler, as recalled.</summary>
    public static ManureTable Nrcs2008 { get; } = new(48, 0.0544, 0.0159, 0.0308, Describe(
        "manure-nrcs", "Manure of a finished broiler, field handbook", "NRCS2008", "NRCS Agricultural Waste Management Field Handbook, chapter 4, March 2008", "0.12, 0.035 and 0.068 lb, recalled; taken to be the same bird of 48 d"));

    /// <summary>Source and how it is known.</summary>
    public ModelInfo Model { get; }

    /// <summary>Nitrogen of the table's own bird.</summary>
    public Mass Nitrogen { get; }

    /// <summary>Phosphorus of the table's own bird.</summary>
    public Mass Phosphorus { get; }

    /// <summary>Potassium of the table's own bird.</summary>
    public Mass Potassium { get; }

    /// <summary>Nitrogen a day over the table's own life.</summary>
    public MassFlow NitrogenPerDay => MassFlow.FromGramsPerDay(Nitrogen.Grams / days);

    /// <summary>Nitrogen of a bird finished at an age: the table's own only.</summary>
    /// <param name="finished">The age at which birds leave.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another age than the table's, which says nothing about it: use <see cref="NitrogenBalance"/>.</exception>
    public Mass NitrogenOfBird(Age finished) => finished.Days == days
        ? Nitrogen
        : throw new ArgumentOutOfRangeException(
            nameof(finished), string.Create(CultureInfo.InvariantCulture, $"{finished.Days} d is not allowed; the table holds at {days} d only: use a feed balance."));

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Describe(string id, string name, string key, string reference, string locator) => new(
        id,
        name,
        "N, P, K = table",
        [new("N", "nitrogen excreted by a bird of 48 d", "kg"), new("P", "phosphorus", "kg"), new("K", "potassium", "kg")],
        [new Citation(key, reference, HowKnown.Memory, locator)],
        "Against total collection to 2.36 kg a draft over-predicted dry matter, nitrogen and phosphorus by 19.4, 14 and 13 % (Angel et al. 2003, abstract).",
        HowKnown.Memory,
        [new ValidityRange("age", 48, 48, "d")]);
}
