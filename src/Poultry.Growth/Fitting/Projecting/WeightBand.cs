using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>The share of a flock's birds that weigh so much.</summary>
public sealed class WeightBand
{
    internal WeightBand(double? fromKilograms, double? toKilograms, double share)
    {
        (From, To) = (Weight(fromKilograms), Weight(toKilograms));

        // Of two limits a rounding apart the share between may come out a rounding below 0.
        Share = Probability.FromFraction(Math.Max(0, share));
    }

    /// <summary>Lower limit; null for the lightest birds.</summary>
    public Mass? From { get; }

    /// <summary>Upper limit; null for the heaviest birds.</summary>
    public Mass? To { get; }

    /// <summary>The share of the birds that is to be expected.</summary>
    public Probability Share { get; }

    /// <summary>Limits and share in one line, as in <c>2.2 kg (4.85 lb) to 2.8 kg (6.17 lb): 36.5 %</c>, in every culture.</summary>
    public override string ToString()
    {
        string limits = (From?.Kilograms, To?.Kilograms) switch
        {
            ({ } from, { } to) => WeightText.Of(from) + " to " + WeightText.Of(to),
            ({ } from, null) => "above " + WeightText.Of(from),
            var (_, to) => "below " + WeightText.Of(to!.Value),
        };
        return limits + ": " + Share;
    }

    private static Mass? Weight(double? kilograms) => kilograms is { } known ? Mass.FromKilograms(known) : null;
}
