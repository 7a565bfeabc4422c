using System.Globalization;
using Poultry.Growth.Benchmarks.Studies;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>The page docs/studies/shape-step.md says what the library does today: halving the step between shapes moves no limit by more than 1 %.</summary>
public class ShapeStepStudyTests
{
    private static readonly string[] Lines = File.ReadAllLines(Repository.PathOf("docs/studies/shape-step.md"));

    [Fact]
    public void The_first_batches_are_as_printed()
    {
        foreach (StudyRow row in ShapeStepStudy.Rows)
        {
            for (int batch = 0; batch < ShapeStepStudy.FirstBatches; batch++)
            {
                double move = ShapeStepStudy.Move(row, batch);
                Lines.Should().Contain(ShapeStepStudy.FirstBatch(row, batch, move));
            }
        }
    }

    [Fact]
    public void No_limit_of_any_batch_moved_by_more_than_1_percent()
    {
        foreach (StudyRow row in ShapeStepStudy.Rows)
        {
            string line = Lines.First(line => line.StartsWith("| " + row.Name + " | ", StringComparison.Ordinal));
            double.Parse(line.Trim('|').Split('|')[3], CultureInfo.InvariantCulture).Should().BeLessThanOrEqualTo(1);
        }
    }
}
