using System.Globalization;
using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Fitting;

/// <summary>
/// What is known about a batch's growth before a bird of it is weighed: the curves it may follow, as a normal distribution of the three
/// parameters of a Gompertz curve, ln A, ln k and t*, with its evidence.
/// </summary>
/// <remarks>
/// A prior is about birds of one <see cref="Sex"/>; for mixed birds it is about the mean of cockerels and pullets. A narrow prior is a strong claim: when in
/// doubt take the wider one. Immutable, and safe to share between threads.
/// </remarks>
public sealed class GrowthPrior
{
    /// <summary>How many numbers describe a curve: ln A, ln k, t*.</summary>
    internal const int Parameters = 3;

    private readonly double[] mean;
    private readonly double[] covariance;

    private GrowthPrior(ModelInfo model, Sex sex, double[] mean, double[] covariance, IReadOnlyList<Caution> cautions)
    {
        (Model, Sex, Cautions) = (model, sex, cautions);
        (this.mean, this.covariance) = (mean, covariance);
    }

    /// <summary>Whose growth this is, by name.</summary>
    public string Name => Model.Name;

    /// <summary>What the prior rests on.</summary>
    public ModelInfo Model { get; }

    /// <summary>The birds it is about.</summary>
    public Sex Sex { get; }

    /// <summary>What to mind when using it.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The curve in the middle of the prior.</summary>
    public GompertzCurve Centre => GompertzCurve.Of(
        Mass.FromKilograms(Math.Exp(mean[0])), DailyRate.FromPerDay(Math.Exp(mean[1])), Age.FromDays(mean[2]));

    /// <summary>Means of ln A (A in kg), ln k (k in 1/d) and t* (d).</summary>
    public IReadOnlyList<double> Means => mean.AsReadOnly();

    /// <summary>Covariances of ln A, ln k and t*, row by row.</summary>
    public IReadOnlyList<double> Covariances => covariance.AsReadOnly();

    /// <summary>The wider prior that stands behind this one, in case the batch is none of its kind; null where there is none.</summary>
    public GrowthPrior? Fallback { get; private init; }

    /// <summary>The chance given beforehand that the wider prior is the right one; 0 where there is none.</summary>
    public double FallbackShare { get; private init; }

    /// <summary>Spread between birds of one sex as a fraction of their mean, where the prior's source tells it, as past batches do; null where it does not.</summary>
    public double? CoefficientOfVariation { get; private init; }

    /// <summary>Error of a whole weigh-in (scale, place, time of day) as a fraction of the mean, where the prior's source tells it, as past batches do; null where it does not.</summary>
    public double? WeighInError { get; private init; }

    internal ReadOnlySpan<double> Mean => mean;

    internal ReadOnlySpan<double> Covariance => covariance;

    /// <summary>
    /// Fast-growing birds, well kept, about as breeders' objectives and published parameters say: A 7.0 kg, k 0.0395/d, t* 38.5 d for both sexes
    /// together, with standard deviations of 0.20 of ln A, 0.10 of ln k, 4 d of t*. About 4.2 kg at 56 d, which few farms outdoors see.
    /// </summary>
    /// <param name="sex">Cockerels lie half the difference of the sexes above the middle, pullets half below.</param>
    public static GrowthPrior FastGrowingObjective(Sex sex) => ShippedPriors.FastGrowingObjective(sex);

    /// <summary>
    /// Fast-growing birds outdoors: A 4.9 kg, k 0.0395/d, t* 38.5 d for both sexes together, with standard deviations of 0.25 of ln A, 0.10 of ln k,
    /// 4 d of t*. About 3.0 kg at 56 d. The prior to use for birds outdoors where nothing better is known.
    /// </summary>
    /// <param name="sex">Cockerels lie half the difference of the sexes above the middle, pullets half below.</param>
    public static GrowthPrior FastGrowingOutdoor(Sex sex) => ShippedPriors.FastGrowingOutdoor(sex);

    /// <summary>
    /// Slower-growing birds: A 5.9 kg, k 0.0318/d, t* 47 d for cockerels, 4.0 kg, 0.0340/d, 41 d for pullets, with standard deviations of 0.30 of
    /// ln A, 0.16 of ln k, 6 d of t*. About 2.5 kg at 56 d for both sexes together.
    /// </summary>
    /// <param name="sex">The birds; mixed lies half way between cockerels and pullets.</param>
    public static GrowthPrior SlowGrowing(Sex sex) => ShippedPriors.SlowGrowing(sex);

    /// <summary>A prior from means and covariances.</summary>
    /// <param name="model">Whose growth it is, and what the figures rest on.</param>
    /// <param name="sex">The birds it is about.</param>
    /// <param name="means">Means of ln A (A in kg), ln k (k in 1/d) and t* (d, 0 or more).</param>
    /// <param name="covariances">Their covariances, row by row: nine numbers, symmetric and positive definite.</param>
    /// <param name="cautions">What to mind when using it.</param>
    /// <exception cref="ArgumentException">A span has the wrong length, or the covariances are not symmetric and positive definite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or t* is below 0.</exception>
    public static GrowthPrior FromMoments(
        ModelInfo model, Sex sex, ReadOnlySpan<double> means, ReadOnlySpan<double> covariances, params ReadOnlySpan<Caution> cautions)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.SameLength(Parameters, means.Length, nameof(means));
        Require.SameLength(Parameters * Parameters, covariances.Length, nameof(covariances));
        Require.Finite(means[0], "ln kg", nameof(means));
        Require.Finite(means[1], "ln 1/d", nameof(means));
        Require.NotNegative(means[2], "d", nameof(means));
        RequirePositiveDefinite(covariances, nameof(covariances));
        return new GrowthPrior(model, sex, means.ToArray(), covariances.ToArray(), cautions.ToArray());
    }

    /// <summary>A prior about the curve of a table, a handbook's or a breeder's, as wide as another prior.</summary>
    /// <param name="table">The table; four rows or more from 7 d on. Its cautions stay with the prior.</param>
    /// <param name="spread">The prior whose width and sex this one gets: how far flocks lie from the table is nothing that a table says.</param>
    /// <returns>The prior; its centre is the Gompertz curve that follows the rows from 7 d on with the least error in percent.</returns>
    /// <exception cref="ArgumentException">No Gompertz curve follows the rows: the message says why.</exception>
    public static GrowthPrior FromTable(TabulatedCurve table, GrowthPrior spread)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(spread);
        return new GrowthPrior(TablePrior.Model(table), spread.Sex, TablePrior.Means(table), spread.covariance, table.Cautions);
    }

    /// <summary>The same prior with a wider one behind it, for the batch that is none of its kind: another strain, a bad season.</summary>
    /// <param name="wider">The wider prior, of birds of the same sex.</param>
    /// <param name="share">The chance given beforehand that the wider one is right, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not between 0 and 1.</exception>
    /// <exception cref="ArgumentException">The wider prior is about birds of another sex.</exception>
    public GrowthPrior WithFallback(GrowthPrior wider, double share)
    {
        ArgumentNullException.ThrowIfNull(wider);
        Require.Share(share);
        return wider.Sex == Sex
            ? With(wider, share, CoefficientOfVariation, WeighInError)
            : throw new ArgumentException($"The wider prior is of {wider.Sex} birds, this one of {Sex} birds; expected the same sex.", nameof(wider));
    }

    /// <summary>The same prior with what its source tells of weighing: a projection takes it where weigh-ins and options do not tell.</summary>
    /// <param name="coefficientOfVariation">Spread between birds of one sex as a fraction of their mean, between 0 and 1; null where it is not known.</param>
    /// <param name="weighInError">Error of a whole weigh-in as a fraction of the mean, 0 to 0.5; null where it is not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of its range.</exception>
    public GrowthPrior WithScatter(double? coefficientOfVariation, double? weighInError)
    {
        _ = coefficientOfVariation is { } variation ? Require.Share(variation, nameof(coefficientOfVariation)) : 0;
        _ = weighInError is { } error ? Require.Between(error, 0, ProjectionOptions.LargestWeighInError, "", nameof(weighInError)) : 0;
        return With(Fallback, FallbackShare, coefficientOfVariation, weighInError);
    }

    /// <summary>Name, sex and centre in one line and in every culture.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Name} ({Sex}): A {WeightText.Of(Math.Exp(mean[0]))}, k {Math.Exp(mean[1]):0.####}/d, t* {mean[2]:0.#} d");

    /// <summary>A prior whose three parameters are independent.</summary>
    internal static GrowthPrior Independent(
        ModelInfo model, Sex sex, ReadOnlySpan<double> means, ReadOnlySpan<double> deviations, params ReadOnlySpan<Caution> cautions)
    {
        Span<double> covariances = stackalloc double[Parameters * Parameters];
        covariances.Clear();
        for (int i = 0; i < Parameters; i++)
        {
            covariances[i * (Parameters + 1)] = deviations[i] * deviations[i];
        }

        return FromMoments(model, sex, means, covariances, cautions);
    }

    private GrowthPrior With(GrowthPrior? fallback, double fallbackShare, double? coefficientOfVariation, double? weighInError) => new(Model, Sex, mean, covariance, Cautions)
    {
        Fallback = fallback,
        FallbackShare = fallbackShare,
        CoefficientOfVariation = coefficientOfVariation,
        WeighInError = weighInError,
    };

    private static void RequirePositiveDefinite(ReadOnlySpan<double> covariances, string argument)
    {
        Span<double> factor = stackalloc double[Parameters * Parameters];
        covariances.CopyTo(factor);
        for (int i = 0; i < Parameters; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (double below, double above) = (covariances[(i * Parameters) + j], covariances[(j * Parameters) + i]);
                if (!(Math.Abs(below - above) <= 1e-12 * (Math.Abs(below) + Math.Abs(above))))
                {
                    throw new ArgumentException("The covariances are not symmetric.", argument);
                }
            }
        }

        if (!Cholesky.Factor(factor, Parameters))
        {
            throw new ArgumentException("The covariances are not positive definite; expected each variance above 0 and correlations within -1 to 1.", argument);
        }
    }
}
