using Poultry.Growth.Carcass;

namespace Poultry.Growth.Planning;

/// <summary>Sells the packs of one fate: what is asked for at its price, what fits the freezer later.</summary>
internal static class Selling
{
    /// <param name="plan">The batch.</param>
    /// <param name="inputs">What was drawn.</param>
    /// <param name="packs">Packs and the kilograms in them, offer by offer; then room for packs sold at their price and packs left, offer by offer.</param>
    /// <param name="lesionKilograms">Of all meat packed, what is lost to dead tenders.</param>
    public static (double Revenue, double SoldKilograms, double Filled) Of(BatchPlan plan, DrawnInputs inputs, Span<double> packs, double lesionKilograms)
    {
        Numerics.RandomStream demand = inputs.Demand;
        (double revenue, double packed, double soldKilograms, double asked, double met) = (0, 0, 0, 0, 0);
        for (int i = 0; i < plan.Offers.Count; i++)
        {
            PackOffer offer = plan.Offers[i];
            (double count, double kilograms) = (packs[2 * i], packs[2 * i] > 0 ? packs[(2 * i) + 1] / packs[2 * i] : 0);
            double u = demand.NextUniform();
            double wanted = offer.Demand.Packs is { } range ? Triangular.Quantile(range, u) : double.PositiveInfinity;
            double sold = Math.Min(count, wanted);
            double frozen = Math.Min(count - sold, offer.FreezerPacks);
            revenue += (sold * (offer.PricePerPack?.Amount ?? (kilograms * offer.Price!.Value.AmountPerKilogram))) + (frozen * kilograms * offer.LeftPrice.AmountPerKilogram);
            (packs[2 * (plan.Offers.Count + i)], packs[(2 * (plan.Offers.Count + i)) + 1]) = (sold, count - sold);
            packed += count * kilograms;
            soldKilograms += (sold + frozen) * kilograms;
            if (double.IsFinite(wanted))
            {
                asked += wanted;
                met += sold;
            }
        }

        double lost = packed == 0 ? 0 : Math.Min(1, lesionKilograms / packed);
        return (revenue * Triangular.Quantile(plan.Prices, inputs.Prices) * (1 - lost), soldKilograms, asked > 0 ? met / asked : 1);
    }
}
