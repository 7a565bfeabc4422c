using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>What lesions may cost a batch, split by how the birds are sold.</summary>
public sealed class LesionLoss
{
    private LesionLoss(Estimate<Mass> lostAtPlant, TrimRecord record, AffectedBirds? hidden, Money refund) =>
        (LostAtPlant, Record, Hidden, RefundPerBird) = (lostAtPlant, record, hidden, refund);

    /// <summary>Tender and fillet cut away of deboned birds that the farm's own figures do not hold yet; nothing where they do.</summary>
    public Estimate<Mass> LostAtPlant { get; }

    /// <summary>Whether the farm's figure held lesions already.</summary>
    public TrimRecord Record { get; }

    /// <summary>Birds on the bone that carry a lesion which nobody saw to the customer; null where none are sold so.</summary>
    public AffectedBirds? Hidden { get; }

    /// <summary>What a customer who finds one gets, as the user set it.</summary>
    public Money RefundPerBird { get; }

    /// <summary>Refunds if every customer finds the lesion and asks.</summary>
    public Money ExpectedRefunds => RefundPerBird * (Hidden?.ExpectedBirds ?? 0);

    /// <summary>The loss of a batch.</summary>
    /// <param name="lesions">The share of birds affected, as a distribution.</param>
    /// <param name="sale">How the birds are sold; at least one.</param>
    /// <param name="meat">What is cut away of an affected bird.</param>
    /// <param name="record">Whether the farm's packed ratio or trim figure contains lesions already.</param>
    /// <param name="refundPerBird">For a bird on the bone of which the customer complains.</param>
    /// <param name="level">The chance that the ranges claim, between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public static LesionLoss Of(BatchPrevalence lesions, SaleSplit sale, MeatAtRisk meat, TrimRecord record, Money refundPerBird = default, double level = 0.90)
    {
        ArgumentNullException.ThrowIfNull(lesions);
        ArgumentNullException.ThrowIfNull(sale);
        ArgumentNullException.ThrowIfNull(meat);
        Require.Share(level);
        Estimate<Mass> Lost(double birds, double low, double high) => new(
            birds * meat.PerAffectedBird, Interval<Mass>.Of(low * meat.PerAffectedBird, high * meat.PerAffectedBird, level), MeatAtRisk.Model, lesions.Cautions);
        Estimate<Mass> lost = Lost(0, 0, 0);
        if (sale.DebonedBirds > 0 && record == TrimRecord.SoundBirds)
        {
            AffectedBirds deboned = lesions.Among(sale.DebonedBirds, level);
            lost = Lost(deboned.ExpectedBirds, deboned.Interval.Low!.Value, deboned.Interval.High!.Value);
        }

        return new(lost, record, sale.BirdsOnTheBone > 0 ? lesions.Among(sale.BirdsOnTheBone, level) : null, refundPerBird);
    }

    /// <summary>Meat lost at the plant and birds sold with a lesion, in every culture.</summary>
    public override string ToString() =>
        WeightText.Of(LostAtPlant.Value.Kilograms) + " lost at the plant" + (Hidden is { } hidden ? "; unseen to the customer: " + hidden : "");
}
