using System.Globalization;
using UnitsNet;

namespace Poultry.Growth.Weighing;

/// <summary>One bar of a histogram of weights.</summary>
public sealed class HistogramBin
{
    internal HistogramBin(double fromKilograms, double toKilograms, int birds) =>
        (FromKilograms, ToKilograms, Birds) = (fromKilograms, toKilograms, birds);

    /// <summary>The lower edge; a bird of exactly this weight is in this bar.</summary>
    public Mass From => Mass.FromKilograms(FromKilograms);

    /// <summary>The upper edge; a bird of exactly this weight is in the next bar.</summary>
    public Mass To => Mass.FromKilograms(ToKilograms);

    /// <summary>How many birds.</summary>
    public int Birds { get; }

    internal double FromKilograms { get; }

    internal double ToKilograms { get; }

    /// <summary>One line, as in <c>2.4..2.6 kg (5.29..5.73 lb): 7</c>, in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{FromKilograms:0.####}..{ToKilograms:0.####} kg ({From.Pounds:0.##}..{To.Pounds:0.##} lb): {Birds}");
}
