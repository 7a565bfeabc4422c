using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Planning;

/// <summary>What an earlier batch ate from placement to killing, and what the model says birds of its weights and number eat.</summary>
public sealed class PastFeed
{
    private PastFeed(double eaten, double expected, string model) => (Eaten, Expected, Model) = (Mass.FromKilograms(eaten), Mass.FromKilograms(expected), model);

    /// <summary>Delivered less what was left.</summary>
    public Mass Eaten { get; }

    /// <summary>What the model says for the growth and the head that the batch had, waste included.</summary>
    public Mass Expected { get; }

    /// <summary>The id of the model: ratios of different models are not comparable.</summary>
    public string Model { get; }

    /// <summary>Eaten over expected: above 1 the farm's birds ate, or spilt, more.</summary>
    public double Ratio => Eaten.Kilograms / Expected.Kilograms;

    /// <summary>The feed of a batch.</summary>
    /// <param name="eaten">Delivered less what was left, above 0.</param>
    /// <param name="expected">By the model, above 0.</param>
    /// <param name="model">Its id.</param>
    /// <exception cref="ArgumentException">The id is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is not above 0, or one is more than three times the other: a delivery is missing.</exception>
    public static PastFeed Of(Mass eaten, Mass expected, string model)
    {
        double modelled = Require.Positive(expected.Kilograms, "kg", nameof(expected));
        return new(Require.Between(eaten.Kilograms, modelled / 3, modelled * 3, "kg", nameof(eaten)), modelled, Require.Text(model));
    }

    /// <summary>As in <c>1.04 (2180 of 2096 kg; 4806 of 4621 lb)</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Ratio:0.00} ({Eaten.Kilograms:0} of {Expected.Kilograms:0} kg; {Eaten.Pounds:0} of {Expected.Pounds:0} lb)");
}
