namespace Poultry.Growth.Tests.Conformance;

/// <summary>A figure of the library and its reference.</summary>
internal readonly record struct Compared(string What, double Got, double Expected)
{
    /// <summary>As a share of the reference; nothing but nothing agrees with a reference of zero.</summary>
    public double Deviation => Got.Equals(Expected) ? 0 : Math.Abs((Got - Expected) / Expected);
}
