namespace Poultry.Growth.Numerics;

/// <summary>Cuts the one span of the caller into pieces.</summary>
internal static class Workspace
{
    /// <summary>The spacing of doubles at 1.</summary>
    public const double UnitRounding = 2.220446049250313e-16;

    /// <summary>Room for so many numbers, that of a fit of some fifty weigh-ins, is taken from the stack: what many threads fit leaves no garbage for which all must wait.</summary>
    public const int StackRoom = 2048;

    /// <summary>Takes the first elements off what is left.</summary>
    public static Span<double> Take(scoped ref Span<double> left, int length)
    {
        Span<double> taken = left[..length];
        left = left[length..];
        return taken;
    }
}
