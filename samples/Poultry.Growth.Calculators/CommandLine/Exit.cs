namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>What the program returns.</summary>
internal static class Exit
{
    public const int Done = 0;

    /// <summary>Nothing was wrong, but there is no answer: status and reason were printed.</summary>
    public const int NoAnswer = 1;

    /// <summary>The command line or a file is wrong: every problem was printed.</summary>
    public const int WrongInput = 2;

    /// <summary>As in sysexits: a fault of ours.</summary>
    public const int ProgramError = 70;

    /// <summary>As shells count it: stopped by Ctrl-C.</summary>
    public const int Stopped = 130;

    /// <summary>Prints problems, one a line.</summary>
    public static int Refuse(TextWriter errors, IEnumerable<string> problems)
    {
        foreach (string problem in problems)
        {
            errors.WriteLine(problem);
        }

        return WrongInput;
    }
}
