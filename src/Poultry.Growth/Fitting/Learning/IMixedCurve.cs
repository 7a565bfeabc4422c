namespace Poultry.Growth.Fitting;

/// <summary>A curve in the coordinates that differ normally from batch to batch, on the scale on which errors add.</summary>
internal interface IMixedCurve
{
    /// <summary>How many coordinates, at most 16.</summary>
    int Coordinates { get; }

    /// <summary>Writes values and their derivatives, column by column: d f(t[i]) / d coordinate[j] at [j * ages + i]. False where one is not finite.</summary>
    bool Evaluate(ReadOnlySpan<double> coordinates, ReadOnlySpan<double> ageDays, Span<double> values, Span<double> jacobian);
}
