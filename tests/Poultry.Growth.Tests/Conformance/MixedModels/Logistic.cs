using Poultry.Growth.Fitting;

namespace Poultry.Growth.Tests.Conformance.MixedModels;

/// <summary>A / (1 + exp((xmid - t) / scal)) in its own parameters, errors adding to the weight itself: the model of the references.</summary>
internal readonly struct Logistic : IMixedCurve
{
    public int Coordinates => 3;

    public bool Evaluate(ReadOnlySpan<double> coordinates, ReadOnlySpan<double> ageDays, Span<double> values, Span<double> jacobian)
    {
        (double mature, double middle, double scale) = (coordinates[0], coordinates[1], coordinates[2]);
        int n = ageDays.Length;
        bool sound = true;
        for (int i = 0; i < n; i++)
        {
            double u = (middle - ageDays[i]) / scale;
            double share = 1 / (1 + Math.Exp(u));
            double slope = mature * share * (1 - share);
            values[i] = mature * share;
            jacobian[i] = share;
            jacobian[n + i] = -slope / scale;
            jacobian[(2 * n) + i] = slope * u / scale;
            sound &= double.IsFinite(values[i]) && double.IsFinite(slope) && double.IsFinite(u * slope);
        }

        return sound;
    }
}
