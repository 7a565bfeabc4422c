namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>What a room does most, and another way to the same that anyone would try.</summary>
internal sealed class HotPath
{
    private HotPath(string name, string alternative, Action ours, Action theirs) => (Name, Alternative, Ours, Theirs) = (name, alternative, ours, theirs);

    public string Name { get; }

    public string Alternative { get; }

    public Action Ours { get; }

    public Action Theirs { get; }

    public static HotPath Of<TOurs, TTheirs>(string name, Func<TOurs> ours, string alternative, Func<TTheirs> theirs) => new(name, alternative, Keep(ours), Keep(theirs));

    /// <summary>The result is kept, lest the compiler drop the work.</summary>
    private static Action Keep<T>(Func<T> work)
    {
        T?[] kept = new T?[1];
        return () => kept[0] = work();
    }
}
