using System.Globalization;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>The share of a flock's birds that weigh so much.</summary>
public sealed class WeightBand
{
    internal WeightBand(double? fromKilograms, double? toKilograms, double share)
    {
        (From, To) = (Weight(fromKilograms), Weight(toKilograms));
        Share = Probability.FromFraction(share);
    }

    /// <summary>Lower limit; null for the lightest birds.</summary>
    public Mass? From { get; }

    /// <summary>Upper limit; null for the heaviest birds.</summary>
    public Mass? To { get; }

    /// <summary>The share of the birds that is to be expected.</summary>
    public Probability Share { get; }

    /// <summary>Limits and share in one line, as in <c>2.2 to 2.8 kg: 36.5 %</c>, in every culture.</summary>
    public override string ToString()
    {
        string limits = (From?.Kilograms, To?.Kilograms) switch
        {
            (null, { } to) => string.Create(CultureInfo.InvariantCulture, $"below {to:0.###} kg"),
            ({ } from, null) => string.Create(CultureInfo.InvariantCulture, $"above {from:0.###} kg"),
            var (from, to) => string.Create(CultureInfo.InvariantCulture, $"{from:0.###} to {to:0.###} kg"),
        };
        return limits + ": " + Share;
    }

    private static Mass? Weight(double? kilograms) => kilograms is { } known ? Mass.FromKilograms(known) : null;
}
