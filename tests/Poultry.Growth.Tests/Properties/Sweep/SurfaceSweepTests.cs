using System.Collections.Concurrent;
using Poultry.Growth.Tests.Planning;

namespace Poultry.Growth.Tests.Properties.Sweep;

/// <summary>One bird or a million, a gram or 100 kg, age 0 or 400 d, nothing, less than nothing and what is no number: an answer or a clear refusal, of every public member.</summary>
public sealed class SurfaceSweepTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Every_call_is_answered_or_clearly_refused(int seed)
    {
        SurfaceSweep sweep = new(seed, HarvestCase.Plan(), HarvestCase.On(49));

        sweep.Run(SweepSettings.Calls);

        sweep.Faults.Should().BeEmpty();
        sweep.Answered.Count.Should().BeGreaterThan(700, "most of what the library shows is reached");
    }

    /// <summary>Objects are shared by all threads: eight of them ask for the same again, each in an order of its own, and get the same bits.</summary>
    [Fact]
    public void Shared_objects_give_every_thread_the_same_bits()
    {
        SurfaceSweep sweep = new(3, HarvestCase.Plan(), HarvestCase.On(49));
        sweep.Run(4000);
        ConcurrentBag<string> different = [];

        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, thread =>
        {
            (string Call, Func<object?> Again, string Answer)[] calls = [.. sweep.Replays];
            new Random(thread).Shuffle(calls);
            foreach ((string call, Func<object?> again, string answer) in calls)
            {
                if (Snapshot.Of(again()) is { } now && now != answer)
                {
                    different.Add(call + ": " + answer + " and then " + now);
                }
            }
        });

        sweep.Replays.Count.Should().BeGreaterThan(1000);
        different.Should().BeEmpty();
    }
}
