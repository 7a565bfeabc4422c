using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>What the # lines of a weigh-in file say about the batch: strain, system and sex.</summary>
internal sealed class BatchTags
{
    private NamedComment? strain;
    private NamedComment? system;
    private NamedComment? sex;

    public static BatchTags Of(IEnumerable<NamedComment> statements, ProblemList problems)
    {
        BatchTags tags = new();
        foreach (NamedComment comment in statements)
        {
            if (comment.Is("strain"))
            {
                Keep(ref tags.strain, comment, "the name of the strain", problems);
            }
            else if (comment.Is("system"))
            {
                Keep(ref tags.system, comment, "how the birds were kept, as in movable shelter", problems);
            }
            else if (comment.Is("sex"))
            {
                Keep(ref tags.sex, comment, "male, female or mixed", problems);
                if (comment.Value.Text.Length > 0 && SexOf(comment.Value.Text) is null)
                {
                    problems.Add(comment.Value, "sex", "is no sex", "male, female or mixed");
                }
            }
        }

        return tags;
    }

    /// <summary>The kind of the batch, and a problem where its sex is not that of its weigh-ins. Only for a file without problems.</summary>
    public BatchKind KindOf(WeighInSeries series, ProblemList problems)
    {
        Sex[] weighed = [.. series.Select(weighIn => weighIn.Sex).Distinct()];
        Sex stated = sex is { } tag ? SexOf(tag.Value.Text)!.Value : weighed is [var one] ? one : Sex.Mixed;
        WeighIn? stranger = stated == Sex.Mixed ? null : series.FirstOrDefault(weighIn => weighIn.Sex != stated && weighIn.Sex != Sex.Mixed);
        if (stranger is not null)
        {
            problems.Add(sex!.Value.Value, "sex", $"is not the sex of the weigh-in at {stranger.Age}", "mixed, or weigh-ins of one sex");
        }

        return BatchKind.Of(strain?.Value.Text, system?.Value.Text, stated);
    }

    private static void Keep(ref NamedComment? tag, NamedComment comment, string expected, ProblemList problems)
    {
        comment.Once(tag is not null, problems);
        if (comment.Value.Text.Length == 0)
        {
            problems.Add(comment.Value, comment.Name, "is empty", expected);
        }

        tag = comment;
    }

    private static Sex? SexOf(string text) => text.ToUpperInvariant() switch
    {
        "MALE" or "M" => Sex.Male,
        "FEMALE" or "F" => Sex.Female,
        "MIXED" => Sex.Mixed,
        _ => null,
    };
}
