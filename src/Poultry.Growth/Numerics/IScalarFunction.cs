namespace Poultry.Growth.Numerics;

/// <summary>A function of one number.</summary>
internal interface IScalarFunction
{
    /// <summary>Its value; infinite is allowed, not a number says that it has none.</summary>
    double At(double x);
}
