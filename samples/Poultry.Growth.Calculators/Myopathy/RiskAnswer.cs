using Poultry.Growth.Evidence;
using Poultry.Growth.Myopathy;
using UnitsNet;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>Everything that tables, JSON and chart show of the risk of a batch.</summary>
internal sealed class RiskAnswer
{
    /// <summary>The weight at which a tender is told where none is given.</summary>
    private static readonly Mass UsualWeight = Mass.FromKilograms(2.6);

    private RiskAnswer(RiskQuestion question, double level)
    {
        (Question, Level) = (question, level);
        PlanningRisk model = LesionWords.Model(question.Farm);
        Prevalence = (question.WithRanges ? model.WithParameterRanges : model).For(question.Batch);
        AllRanges = model.WithParameterRanges.For(question.Batch);
        Farm = question.Farm is null ? (question.WithRanges ? model.WithParameterRanges : model).ForFarm(question.Batch) : null;
        Sensitivity = model.Sensitivity(question.Batch);
        Affected = Prevalence.Among(question.Birds, level);
        int deboned = (int)Math.Round(question.Deboned * question.Birds);
        MeatAtRisk meat = question.Tenders is { } tenders ? MeatAtRisk.OfCuts(tenders, tenders / 2) : MeatAtRisk.OfLiveWeight(question.Batch.LiveWeight ?? UsualWeight);
        PerAffectedBird = meat.PerAffectedBird;
        Loss = LesionLoss.Of(Prevalence, SaleSplit.Of(deboned, question.Birds - deboned), meat, question.Record, question.Refund, level);
        Change = question.ChangeOdds is { } odds ? ChangeWorth.Of(Prevalence, odds, question.Birds, question.Refund, question.Birds) : null;
    }

    public RiskQuestion Question { get; }

    public double Level { get; }

    public BatchPrevalence Prevalence { get; }

    /// <summary>With the ranges of all figures within.</summary>
    public BatchPrevalence AllRanges { get; }

    /// <summary>The farm over many batches; null where its own record says more.</summary>
    public FarmPrevalence? Farm { get; }

    public IReadOnlyList<RiskSensitivity> Sensitivity { get; }

    public AffectedBirds Affected { get; }

    public Mass PerAffectedBird { get; }

    public LesionLoss Loss { get; }

    public ChangeWorth? Change { get; }

    public IReadOnlyList<Caution> Cautions => Question.Tenders is null && Question.Batch.LiveWeight is null && Question.Deboned > 0
        ? [.. Prevalence.Cautions, new("usual-weight", "No live weight and no tenders were given: the loss is that of birds of 2.6 kg (5.73 lb).")]
        : Prevalence.Cautions;

    public IReadOnlyList<Citation> Sources => [.. Prevalence.Model.Citations.Concat(AgeSusceptibility.Model.Citations)
        .Concat(Question.Deboned > 0 ? MeatAtRisk.Model.Citations : []).Concat(Question.Factor?.Sources ?? []).DistinctBy(source => source.Key)];

    public static RiskAnswer To(RiskQuestion question, double level) => new(question, level);
}
