using System.Globalization;

namespace Poultry.Growth.Calculators.CommandLine;

/// <summary>Whoever waits for a long calculation: told how far it is, if there is a terminal and it takes longer than a second, and able to stop it by Ctrl-C.</summary>
/// <param name="terminal">Where to tell; null where errors go to a file or a pipe.</param>
/// <param name="patience">So long nothing is told.</param>
/// <param name="stop">Asks to stop beside Ctrl-C.</param>
internal sealed class Waiting(TextWriter? terminal, TimeSpan patience, CancellationToken stop = default) : IProgress<double>, IDisposable
{
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(1);

    private readonly Lock telling = new();
    private readonly CancellationTokenSource stopped = CancellationTokenSource.CreateLinkedTokenSource(stop);
    private readonly long started = Environment.TickCount64;
    private int told = -1;

    /// <summary>Set when Ctrl-C was pressed.</summary>
    public CancellationToken Stop => stopped.Token;

    /// <summary>Nobody at a terminal.</summary>
    public static Waiting Nobody() => new(null, Usual);

    /// <summary>Somebody at this program's terminal.</summary>
    public static Waiting AtTerminal() => new(Console.IsErrorRedirected ? null : Console.Error, Usual);

    /// <summary>Runs a calculation and what is written of it: Ctrl-C asks it to stop, a second Ctrl-C ends the program at once.</summary>
    public int Run(Func<int> calculation)
    {
        Console.CancelKeyPress += Ask;
        try
        {
            return calculation();
        }
        finally
        {
            Console.CancelKeyPress -= Ask;
            Wipe();
        }
    }

    /// <inheritdoc/>
    public void Report(double value)
    {
        lock (telling)
        {
            int percent = (int)(100 * value);
            if (terminal is not null && percent != told && Environment.TickCount64 - started >= patience.TotalMilliseconds)
            {
                told = percent;
                terminal.Write(string.Create(CultureInfo.InvariantCulture, $"\rTrying fates of the batch: {percent,3} %"));
            }
        }
    }

    /// <summary>Takes the line of progress off the terminal: what follows starts on a clean one.</summary>
    public void Wipe()
    {
        lock (telling)
        {
            if (told >= 0)
            {
                terminal?.Write("\r" + new string(' ', 40) + "\r");
                told = -1;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stopped.Dispose();

    private void Ask(object? sender, ConsoleCancelEventArgs pressed)
    {
        pressed.Cancel = !stopped.IsCancellationRequested;
        stopped.Cancel();
    }
}
