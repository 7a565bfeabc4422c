using System.Runtime.ExceptionServices;

namespace Poultry.Growth.Planning;

/// <summary>How much of a long calculation is done, and whether it shall stop.</summary>
internal sealed class HarvestWork
{
    /// <summary>Tables of a choice take about as long as so many pieces of draws.</summary>
    private const int PiecesOfTables = 8;

    private readonly IProgress<double>? progress;
    private readonly CancellationToken stop;
    private readonly int pieces;
    private readonly Lock counting = new();
    private int done;

    private HarvestWork(HarvestOptions options, int pieces, CancellationToken stop) => (progress, this.pieces, this.stop) = (options.Progress, pieces, stop);

    /// <summary>Makes choices ready, then draws their fates.</summary>
    public static TDraws[] Run<TChoice, TDraws>(
        BatchPlan plan, int count, Func<int, TChoice> choice, Func<int, TDraws> room, HarvestOptions options, CancellationToken stop, out IReadOnlyList<TChoice> choices)
        where TChoice : class, IHarvestChoice
        where TDraws : MarginDraws
    {
        HarvestWork work = new(options, (PiecesOfTables * count) + HarvestSimulation<TDraws>.Chunks(options.Draws), stop);
        TChoice[] made = new TChoice[count];
        work.Each(count, options, at =>
        {
            made[at] = choice(at);
            work.Done(PiecesOfTables);
        });
        choices = made;
        return new HarvestSimulation<TDraws>(plan, made, options.Seed).Run(room, options, work);
    }

    /// <summary>Pieces of work by number, on as many threads as are asked for. What a piece refuses is refused as if it had been the only one.</summary>
    public void Each(int count, HarvestOptions options, Action<int> piece)
    {
        try
        {
            Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = options.Threads, CancellationToken = stop }, piece);
        }
        catch (AggregateException refused)
        {
            ExceptionDispatchInfo.Throw(refused.InnerExceptions[0]);
        }
    }

    /// <summary>So many pieces more are done; told one after the other, so that no earlier part is told after a later one.</summary>
    public void Done(int more)
    {
        lock (counting)
        {
            done += more;
            progress?.Report((double)done / pieces);
        }
    }
}
