namespace Poultry.Growth.Tests.Docs;

/// <summary>The table of docs/benchmarks.md is what benchmarks/baseline.csv says, which is measured and never written by hand.</summary>
public class BenchmarksPageTests
{
    [Fact]
    public void The_table_at_a_glance_is_the_baseline()
    {
        string[] measured = [.. File.ReadLines(Repository.PathOf("benchmarks/baseline.csv")).Skip(1).Select(line => "| " + line.Replace(";", " | ", StringComparison.Ordinal) + " |")];
        string[] rooms = ["Curves", "Weighing", "Flock", "Fitting", "Feeding", "Housing", "Carcass", "Myopathy", "Planning", "Files"];

        rooms.Where(room => !measured.Any(row => row.StartsWith($"| {room}: ", StringComparison.Ordinal))).ShouldBeNone("every room has a hot path");
        File.ReadLines(Repository.PathOf("docs/benchmarks.md")).Where(line => rooms.Any(room => line.StartsWith($"| {room}: ", StringComparison.Ordinal)))
            .Should().Equal(measured, "dotnet run -c Release --project benchmarks/Poultry.Growth.Benchmarks -- check-ratios write shows the rows");
    }
}
