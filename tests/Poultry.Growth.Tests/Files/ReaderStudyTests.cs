using System.Globalization;
using Poultry.Growth.Benchmarks.Studies.Readers;

namespace Poultry.Growth.Tests.Files;

/// <summary>Whatever stands in a file, reading it ends with a value or with problems that name their place: the first cases of docs/studies/readers.md, run again.</summary>
public sealed class ReaderStudyTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.PathOf("docs/studies/readers.md"));

    public static TheoryData<string> Names => new(AllReaders.All.Select(reader => reader.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_first_cases_are_as_printed(string name)
    {
        Reader reader = AllReaders.All.Single(known => known.Name == name);

        ReaderRun run = ReaderStudy.First(reader);

        run.Faults.Should().BeEmpty();
        run.Read.Should().BeInRange(run.Cases / 8, run.Cases * 7 / 8, "both ways are to be walked");
        Lines.Should().Contain(ReaderStudy.FirstLine(reader, run));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_hundred_thousand_files_left_no_fault(string name)
    {
        string[] cells = Lines.Single(line => line.StartsWith("| " + name + " | " + ReaderStudy.Cases.ToString(CultureInfo.InvariantCulture) + " |", StringComparison.Ordinal)).Split('|');

        cells[6].Trim().Should().Be("0");
    }

    /// <summary>A reader that is added to the library is added to the study.</summary>
    [Fact]
    public void No_public_reader_is_left_out()
    {
        string[] readers = [.. typeof(Poultry.Growth.Files.WeighInFile).Assembly.GetExportedTypes()
            .Where(type => type.GetMethods().Any(method => method.IsStatic && (method.Name is "Read" || method.Name.StartsWith("Try", StringComparison.Ordinal))))
            .Select(type => type.Name)];

        readers.Should().NotBeEmpty().And.OnlyContain(reader => AllReaders.All.Any(known => known.Name.StartsWith(reader, StringComparison.Ordinal)));
    }
}
