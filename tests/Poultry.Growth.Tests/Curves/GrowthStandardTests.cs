using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Tests.Conformance;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Tests.Curves;

public class GrowthStandardTests
{
    /// <summary>The rows stand twice, typed apart: there, and in the tests' own tables.</summary>
    [Theory]
    [InlineData("nrc-1984-male", "NRC 1984 male")]
    [InlineData("nrc-1984-female", "NRC 1984 female")]
    [InlineData("objectives-2012-male", "objectives 2012 male")]
    [InlineData("objectives-2012-female", "objectives 2012 female")]
    [InlineData("poultry-crc-male", "Poultry CRC male")]
    [InlineData("poultry-crc-female", "Poultry CRC female")]
    public void Rows_are_as_printed(string id, string table)
    {
        GrowthStandard standard = GrowthStandard.Find(id)!;

        standard.Table.Rows.Select(row => row.Age.Days).Should().Equal(Handbook.Tables[table].Days);
        standard.Table.Rows.Select(row => row.Weight.Grams).Should().Equal(Handbook.Tables[table].Grams, (ours, printed) => Math.Abs(ours - printed) < 1e-9);
        id.Should().EndWith(standard.Sex == Sex.Male ? "-male" : "-female");
    }

    [Fact]
    public void Each_says_whose_it_is_and_what_to_mind()
    {
        GrowthStandard.All.Should().HaveCount(6).And.OnlyHaveUniqueItems(standard => standard.Id).And.OnlyHaveUniqueItems(standard => standard.Name);
        GrowthStandard.All.Should().AllSatisfy(standard => standard.Table.Cautions.Should().NotBeEmpty());
        GrowthStandard.All.Where(standard => standard.Year is not null).Should().AllSatisfy(standard => standard.Name.Should().Contain(standard.Year.ToString()));
        GrowthStandard.Find("objectives-2012-male")!.ToString().Should().Be("objectives-2012-male: Breeder's objectives 2012, males");
        GrowthStandard.Find("poultry-crc-male")!.Table.Cautions.Should().Contain(caution => caution.Code == "standard-misprint");
        GrowthStandard.Find("none").Should().BeNull();
    }

    [Fact]
    public void Birds_of_another_sex_are_compared_with_a_caution()
    {
        WeighIn weighIn = WeighIn.Mean(Age.FromDays(28), Mass.FromGrams(1500), 20);
        GrowthStandard males = GrowthStandard.Find("objectives-2012-male")!;

        IEnumerable<string> Codes(WeighIn weighed) => StandardComparison.With(WeighInSeries.Of(weighed), males)[0].Difference!.Cautions.Select(caution => caution.Code);

        Codes(weighIn).Should().Contain("standard-of-other-sex");
        Codes(weighIn.Of(Sex.Male)).Should().NotContain("standard-of-other-sex");
    }
}
