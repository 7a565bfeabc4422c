namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>What the library refuses, in words for whoever typed it.</summary>
internal static class LibraryRefusal
{
    /// <summary>The message without the name of the argument, which says something to programmers only.</summary>
    public static string Said(ArgumentException refused) => refused.Message.Split(" (Parameter")[0];
}
