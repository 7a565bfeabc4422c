using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>When the chicks were placed and how old they were, from the options or from # lines of the file.</summary>
internal sealed class WeighInPlacement
{
    /// <summary>What is wrong with dates where nobody says when the chicks came.</summary>
    public const string NeedsPlacing = "needs the day the chicks were placed";

    private WeighInPlacement(DateOnly? placed, Age? ageAtPlacement) => (Placed, AgeAtPlacement) = (placed, ageAtPlacement);

    public DateOnly? Placed { get; }

    public Age? AgeAtPlacement { get; }

    public static WeighInPlacement Of(IEnumerable<NamedComment> statements, WeighInFileOptions options, ProblemList problems)
    {
        DateOnly? placed = null;
        Age? age = null;
        foreach (NamedComment comment in statements)
        {
            if (comment.Is("placed"))
            {
                comment.Once(placed is not null, problems);
                placed = Date(comment.Value, problems) ?? placed;
            }
            else if (comment.Is(FarmBatchText.AgeAtPlacement))
            {
                comment.Once(age is not null, problems);
                age = Days(comment.Value, problems) ?? age;
            }
        }

        return new(options.Placed ?? placed, options.AgeAtPlacement ?? age);
    }

    /// <summary>A file by date has no ages without both: neither is ever taken for granted.</summary>
    public void RefuseDatesWithoutPlacement(CsvCell dateColumn, ProblemList problems)
    {
        if (Placed is null)
        {
            problems.Add(dateColumn, "header", NeedsPlacing, "a line \"# placed: 2027-04-12\" in the file, or the option placed");
        }

        if (AgeAtPlacement is null)
        {
            problems.Add(
                dateColumn, "header", "needs the age of the chicks when placed", "a line \"# age_at_placement_d: 1\" in the file, or the option age-at-placement");
        }
    }

    private static DateOnly? Date(CsvCell value, ProblemList problems)
    {
        if (QuantityText.TryDate(value.Text, out DateOnly date, out _))
        {
            return date;
        }

        problems.Add(value, "placed", "is not a date", "a date as year, month and day, as in 2027-04-12");
        return null;
    }

    private static Age? Days(CsvCell value, ProblemList problems)
    {
        string? fault = NumberText.Fault(value.Text, out double days) ?? (days < 0 ? "is below 0" : null);
        if (fault is null)
        {
            return Age.FromDays(days);
        }

        problems.Add(value, FarmBatchText.AgeAtPlacement, fault, "an age of 0 or more in d");
        return null;
    }
}
