using Poultry.Growth.Files;
using Poultry.Growth.Tests.ConsoleRuns;

namespace Poultry.Growth.Tests.Files;

/// <summary>Files that belong together are written all or none, wherever it fails.</summary>
public sealed class FileSetTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void All_are_written_and_nothing_else_is_left()
    {
        scratch.Write("a.csv", "old");

        FileSet.Replace(scratch.PathOf("."), [(scratch.PathOf("a.csv"), "new"), (scratch.PathOf("sub/b.csv"), "b")]).Should().BeNull();

        File.ReadAllText(scratch.PathOf("a.csv")).Should().Be("new");
        File.ReadAllText(scratch.PathOf("sub/b.csv")).Should().Be("b");
        scratch.Names().Should().Equal("a.csv", "sub");
    }

    [Fact]
    public void One_that_cannot_be_begun_and_the_others_stay_as_they_were()
    {
        scratch.Write("a.csv", "old");

        // The unfinished file has a longer name than file systems take.
        string? problem = FileSet.Replace(scratch.PathOf("."), [(scratch.PathOf("a.csv"), "new"), (scratch.PathOf("sub/" + new string('b', 250)), "b")]);

        problem.Should().Contain("cannot be written").And.EndWith("nothing was changed");
        File.ReadAllText(scratch.PathOf("a.csv")).Should().Be("old");
        scratch.Names().Should().Equal(["a.csv"], "what was begun is gone, and so is the folder made for it");
    }

    [Fact]
    public void One_that_cannot_be_put_in_its_place_and_those_before_it_are_taken_back()
    {
        scratch.Write("a.csv", "old");
        Directory.CreateDirectory(scratch.PathOf("c.csv"));

        string? problem = FileSet.Replace(
            scratch.PathOf("."), [(scratch.PathOf("a.csv"), "new"), (scratch.PathOf("b.csv"), "b"), (scratch.PathOf("c.csv"), "a folder stands in the way")]);

        problem.Should().EndWith("nothing was changed");
        File.ReadAllText(scratch.PathOf("a.csv")).Should().Be("old");
        scratch.Names().Should().Equal("a.csv", "c.csv");
    }
}
