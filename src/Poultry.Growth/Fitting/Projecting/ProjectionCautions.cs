using System.Globalization;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Fitting;

/// <summary>What a reader of a projection must mind.</summary>
internal static class ProjectionCautions
{
    /// <summary>The ages at which the method was measured, d.</summary>
    public const double FirstTestedDays = 7;
    public const double LastTestedDays = 63;

    /// <summary>Below this share of the Gompertz curves the prior has lost; so has it where its own curve lies further off than chi-square of 3 degrees does in 1 of 100.</summary>
    private const double LeastShare = 0.05;
    private const double LargestDistance = 11.3;

    public static IReadOnlyList<Caution> Of(NodeFits fits, FlockSpread spread, GrowthPrior prior, Caution? disagreement)
    {
        List<Caution> cautions = [.. prior.Cautions];
        if (fits.Data.Count == 0)
        {
            cautions.Add(new("no-weigh-ins", "No bird of this batch is weighed yet: this is what the prior says, not what the batch does."));
        }

        if (fits.Data.TooYoung > 0)
        {
            cautions.Add(TooYoung(fits.Data.TooYoung));
        }

        if (spread.IsAssumed)
        {
            cautions.Add(new("spread-assumed", string.Create(
                CultureInfo.InvariantCulture,
                $"No single birds and no standard deviations were given: a spread of {100 * spread.Variation:0} % between birds of one sex is assumed.")));
        }

        if (spread.SexesExplainMore)
        {
            cautions.Add(new("spread-less-than-sexes", string.Create(
                CultureInfo.InvariantCulture,
                $"The birds weighed lie closer together than cockerels and pullets do: {100 * spread.Variation:0} % within each sex is taken. Were both sexes weighed?")));
        }

        if (fits.Failed > 0)
        {
            cautions.Add(new("curves-left-out", string.Create(
                CultureInfo.InvariantCulture, $"{fits.Failed} of {fits.Count} kinds of curve found no optimum and count nothing.")));
        }

        return disagreement is null ? cautions : [.. cautions, disagreement];
    }

    /// <summary>Says that weigh-ins were left out as too young.</summary>
    public static Caution TooYoung(int weighIns, string more = "") => new("young-weigh-ins-left-out", string.Create(
        CultureInfo.InvariantCulture,
        $"{CountText.Of(weighIns, "weigh-in")} before {ProjectionData.YoungestDays:0} d left out: the first days follow no such curve and say little about the booked day.{more}"));

    /// <summary>Says that the weigh-ins won against the prior; null where they did not.</summary>
    public static Caution? Disagreement(NodeFits fits, GrowthPrior prior)
    {
        double share = 0;
        int best = 0;
        for (int q = 0; q < fits.Count; q++)
        {
            share += q < fits.Plan.GompertzNodes ? fits.Weight(q) : 0;
            best = fits.Weight(q) > fits.Weight(best) ? q : best;
        }

        if (!(share < LeastShare || fits.PriorDistance(best) > LargestDistance))
        {
            return prior.Fallback is { } wider ? Unlike(fits, prior, wider) : null;
        }

        return new("prior-and-data-disagree", string.Create(
                CultureInfo.InvariantCulture,
                $"These weigh-ins do not look like the prior (share of its curves {100 * share:0.#} %): look for a wrong unit, age, sex or strain, or a bad spell. If all are right, another prior fits these birds better."));
    }

    /// <summary>Says that the weigh-ins look more like the wider prior than like the narrow one before it; null where they do not.</summary>
    private static Caution? Unlike(NodeFits fits, GrowthPrior prior, GrowthPrior wider)
    {
        (double own, double behind) = (0, 0);
        for (int q = 0; q < fits.Plan.GompertzNodes; q++)
        {
            (own, behind) = fits.Plan.Nodes[q].Follows == prior ? (own + fits.Weight(q), behind) : (own, behind + fits.Weight(q));
        }

        return own < behind
            ? new("unlike-the-prior", string.Create(
                CultureInfo.InvariantCulture,
                $"These weigh-ins do not look like \"{prior.Name}\" (chance {100 * own / (own + behind):0.#} %): the wider prior behind it counts more, \"{wider.Name}\". Look for another strain, a wrong unit, age or sex, or a bad spell."))
            : null;
    }

    public static IReadOnlyList<Caution> At(IReadOnlyList<Caution> cautions, double days) => days is >= FirstTestedDays and <= LastTestedDays
        ? cautions
        :
        [
            .. cautions,
            new("outside-tested-ages", string.Create(
                CultureInfo.InvariantCulture,
                $"The method was measured from {FirstTestedDays:0} to {LastTestedDays:0} d; at {days:0.##} d its interval is untested.")),
        ];
}
