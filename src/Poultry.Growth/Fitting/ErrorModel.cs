using System.Globalization;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Fitting;

/// <summary>
/// What is assumed about the scatter of weigh-ins around the curve. It decides what counts for how much, and so moves the mature weight a
/// lot: name it whenever a figure is quoted. <see cref="Proportional"/> is the default for live birds, because the spread between birds
/// grows with their weight (about 6 to 13 % of the mean at any age, see docs/fitting.md) and a mean of 40 birds says more than one of 10.
/// </summary>
public sealed class ErrorModel
{
    /// <summary>Spread between birds where nothing is known: 8 to 10 % in well-run flocks of one sex is common practice, no source.</summary>
    internal const double AssumedCoefficientOfVariation = 0.10;

    private ErrorModel(string id, string description, ResidualScale scale) => (Id, Description, Scale) = (id, description, scale);

    /// <summary>
    /// Every line of the record scatters alike in kg, whatever its age and number of birds: plain least squares on the figures as they stand.
    /// For comparison with other tools.
    /// </summary>
    public static ErrorModel EqualVariance { get; } = new(
        "equal", "equal variance: every recorded figure counts the same", ResidualScale.Kilograms);

    /// <summary>
    /// Birds scatter by a fixed share of the mean, a mean of n birds by 1/sqrt(n) of that; maximum likelihood. A mean with its standard
    /// deviation says exactly what its single birds say. The default.
    /// </summary>
    public static ErrorModel Proportional { get; } = new(
        "proportional", "SD proportional to the mean, birds counted, maximum likelihood", ResidualScale.ProportionalLikelihood);

    /// <summary>The same assumption, estimated by weights 1/fitted² that are renewed until they stay: does not use what the scatter itself says about the mean.</summary>
    public static ErrorModel ProportionalIterated { get; } = new(
        "iterated", "SD proportional to the mean, birds counted, iterated weights 1/fitted²", ResidualScale.Kilograms);

    /// <summary>As in <c>proportional</c>.</summary>
    public string Id { get; }

    /// <summary>What is assumed, in one line.</summary>
    public string Description { get; }

    /// <summary>Spread between birds as a fraction of the mean, where the model states it; null where it comes from the birds weighed.</summary>
    public double? CoefficientOfVariation { get; private init; }

    /// <summary>Error of a whole weigh-in (scale, place, time of day) as a fraction of the mean; 0 where the model has none.</summary>
    public double WeighInError { get; private init; }

    internal ResidualScale Scale { get; }

    /// <summary>Whether the size of the scatter is known beforehand and not estimated from the residuals.</summary>
    internal bool IsKnown => Scale == ResidualScale.Logarithm;

    /// <summary>
    /// The scatter is known beforehand: variance of a logarithmic mean of n birds CV²/n, plus the square of an error that hits a whole weigh-in.
    /// </summary>
    /// <param name="coefficientOfVariation">CV between birds as a fraction, between 0 and 1; null takes it from the birds weighed singly or with SD, 0.10 where there are none.</param>
    /// <param name="weighInError">Error of a whole weigh-in as a fraction, 0 to 1; 0.02 is usual where it is not known (assumption).</param>
    /// <exception cref="ArgumentOutOfRangeException">A fraction is out of its range.</exception>
    public static ErrorModel Sampling(double? coefficientOfVariation = null, double weighInError = 0)
    {
        if (coefficientOfVariation is { } cv)
        {
            Require.Share(cv, nameof(coefficientOfVariation));
        }

        Require.Between(weighInError, 0, 1, "");
        string birds = coefficientOfVariation is { } stated
            ? string.Create(CultureInfo.InvariantCulture, $"CV {stated:0.###} stated")
            : "CV from the birds weighed";
        return new("sampling", string.Create(CultureInfo.InvariantCulture, $"known sampling error CV²/n ({birds}), error of a weigh-in {weighInError:0.###}"), ResidualScale.Logarithm)
        {
            CoefficientOfVariation = coefficientOfVariation,
            WeighInError = weighInError,
        };
    }

    /// <summary>The model with this id; null where there is none.</summary>
    /// <param name="id">As in <c>proportional</c>, in capitals or not.</param>
    /// <param name="coefficientOfVariation">For known sampling error only, between 0 and 1; null as in <see cref="Sampling"/>.</param>
    /// <param name="weighInError">For known sampling error only, 0 to 1, as in <see cref="Sampling"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fraction is out of its range.</exception>
    public static ErrorModel? Find(string id, double? coefficientOfVariation = null, double weighInError = 0) =>
        "sampling".Equals(id, StringComparison.OrdinalIgnoreCase) ? Sampling(coefficientOfVariation, weighInError)
        : new[] { EqualVariance, Proportional, ProportionalIterated }.FirstOrDefault(model => model.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    /// <summary>CV between birds as a fraction: stated, else that of the birds weighed, else assumed.</summary>
    internal double BirdSpread(WeighInSeries weighIns) => CoefficientOfVariation ?? weighIns.PooledCoefficientOfVariation ?? AssumedCoefficientOfVariation;

    /// <summary>What a weigh-in counts in the sum of squares, the squares within it that count too, and how many observations it stands for.</summary>
    /// <param name="weighIn">The weigh-in.</param>
    /// <param name="birdSpread">CV between birds.</param>
    internal (double Weight, double Within, double Observations) Weigh(WeighIn weighIn, double birdSpread)
    {
        int birds = weighIn.BirdsWeighed;
        if (IsKnown)
        {
            return (1 / ((birdSpread * birdSpread / birds) + (WeighInError * WeighInError)), 0, 1);
        }

        bool single = weighIn.Kind == WeighInKind.Birds;
        double squares = weighIn.StandardDeviationKilograms is { } deviation ? (birds - 1) * deviation * deviation : 0;
        if (this == EqualVariance)
        {
            return single ? (birds, squares, birds) : (1, 0, 1);
        }

        return (birds, squares, single || weighIn.StandardDeviationKilograms is not null ? birds : 1);
    }

    /// <summary>What is assumed, in one line.</summary>
    public override string ToString() => Description;
}
