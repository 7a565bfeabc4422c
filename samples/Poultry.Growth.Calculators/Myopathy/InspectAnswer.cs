using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Everything that tables, JSON and chart show of an inspection, planned or done.</summary>
internal sealed class InspectAnswer
{
    private InspectAnswer(InspectQuestion question, double level)
    {
        (Question, Level) = (question, level);
        Prior = LesionWords.Model(question.Farm).For(new() { KillAge = Age.FromDays(45) });
        if (question.Prevalence is { } share)
        {
            ToOpen = BirdsToOpen.ToFind(
                BirdPrevalence.Of(Probability.FromFraction(share)), question.Confidence, question.Flock, Probability.FromFraction(question.Detection), question.Correlation);
        }

        if (question is { Opened: { } opened, Found: { } found })
        {
            Rate = FoundShare.Of(found, opened, level);
            Posterior = Prior.After(LesionInspection.Of(opened, found, detection: Probability.FromFraction(question.Detection)));
        }
    }

    public InspectQuestion Question { get; }

    public double Level { get; }

    /// <summary>Of a batch killed from 45 d, before it was opened.</summary>
    public BatchPrevalence Prior { get; }

    public BirdsToOpen? ToOpen { get; }

    public FoundShare? Rate { get; }

    public BatchPrevalence? Posterior { get; }

    /// <summary>"Not attainable" is no answer where nothing else was asked.</summary>
    public bool HasAnswer => Rate is not null || ToOpen is { Birds: not null };

    public IReadOnlyList<Caution> Cautions =>
    [
        .. Posterior is null ? [] : Prior.Cautions,
        new("random-birds", "The birds opened must be a random part of the batch: not the last ones, not those that looked bruised. Open both tenders of each."),
        .. Question.Detection == 1
            ? [new Caution("perfect-detection", "Every affected bird is taken to be seen; fresh, red lesions are easily missed, and no source says how often.")]
            : Array.Empty<Caution>(),
    ];

    public IReadOnlyList<Citation> Sources =>
    [
        .. (ToOpen is null ? [] : BirdsToOpen.Model.Citations).Concat(Rate is null ? [] : FoundShare.Model.Citations.Concat(Prior.Model.Citations)).DistinctBy(source => source.Key),
    ];

    public static InspectAnswer To(InspectQuestion question, double level) => new(question, level);
}
