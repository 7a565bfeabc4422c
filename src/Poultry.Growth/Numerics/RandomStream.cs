namespace Poultry.Growth.Numerics;

/// <summary>
/// Random numbers by count: the n-th number of a stream is a fixed function of (seed, draw, purpose, n), whoever asks first and on whichever thread.
/// </summary>
/// <remarks>The mixing of SplitMix64: Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators, OOPSLA '14, 453-472 (constants from memory; tests hold the moments).</remarks>
internal struct RandomStream
{
    private const ulong Step = 0x9E3779B97F4A7C15;

    private readonly ulong key;
    private ulong count;

    /// <param name="seed">Of the whole run.</param>
    /// <param name="draw">Which draw of it.</param>
    /// <param name="purpose">What the numbers are for: streams of different purpose do not meet.</param>
    public RandomStream(long seed, long draw, int purpose) =>
        key = Mix(Mix(Mix((ulong)seed + Step) ^ (ulong)draw) + (Step * (ulong)(purpose + 1)));

    /// <summary>The next number, evenly spread strictly between 0 and 1.</summary>
    public double NextUniform() => ((Mix(key + (Step * ++count)) >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>The next standard normal number.</summary>
    public double NextNormal() => Distributions.NormalQuantile(NextUniform());

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
