using System.Globalization;
using Poultry.Growth.Evidence;

namespace Poultry.Growth.Planning;

/// <summary>What to mind when a plant's sheet is held against a forecast.</summary>
internal static class ReconciliationCautions
{
    public static IEnumerable<Caution> Of(Reconciliation reconciled)
    {
        PlantSheet sheet = reconciled.Sheet;
        HeadBalance head = reconciled.HeadCount;
        if (head.Remainder != 0)
        {
            string counted = string.Create(
                CultureInfo.InvariantCulture,
                $"{head.Remainder} of {head.Placed} birds are not accounted for ({head.RemainderOnFarm} between chicks and loading, {head.RemainderAtPlant} between unloading and pack).");
            string why = head.Remainder < 0 ? " There are more than there can be: a count is wrong."
                : head.DeathsWritten || head.Undated > 0 ? " They were lost unseen, or a count is wrong."
                : " No deaths were written down: name a file of them in the batch file.";
            yield return new("birds-not-accounted-for", counted + why + " The batch's losses are learned as placed less delivered and on hand.");
        }

        if (!reconciled.WasOffered)
        {
            yield return new("another-day", "The birds were killed on a day that the batch file does not offer: the terms of the booked day, or of the first, were taken.");
        }

        if (sheet.LiveWeight is null)
        {
            yield return new("not-weighed-alive", "No live weight over the scale: weight and yield cannot be told apart, and the batch teaches nothing about dressing. Weigh the crates at loading or at the plant.");
        }

        if (reconciled.EatenKilograms is null)
        {
            yield return new("feed-not-recorded", "Feed to the day of killing was not written down: no conversion, no index, and the batch teaches nothing about feed. Weigh what is left in the bins on that day.");
        }
        else if (reconciled.EatenKilograms < reconciled.Outcome.FeedForBoth / 3 || reconciled.EatenKilograms > reconciled.Outcome.FeedForBoth * 3)
        {
            yield return new("feed-out-of-sense", "The feed eaten is less than a third or more than three times what such birds eat: look for a delivery that was left out or written twice. It is not learned.");
        }

        string[] without = [.. sheet.Packs.Where(pack => !reconciled.Plan.Offers.Any(offer => offer.Piece.Equals(pack.Piece, StringComparison.OrdinalIgnoreCase))).Select(pack => pack.Piece).Distinct()];
        if (without.Length > 0)
        {
            yield return new("packs-not-planned", "Packs that the prices do not name came back: " + string.Join(", ", without) + ". They count as packed weight, and nothing was forecast for them.");
        }

        string[] outside = [.. reconciled.Figures.Where(figure => figure.IsInside == false && figure.Code is "losses" or "dead-on-arrival" or "condemned" or "lesions").Where(figure => figure.Difference > 0).Select(figure => figure.Name)];
        if (outside.Length > 0)
        {
            yield return new("ask-the-vet", "More than the forecast allows: " + string.Join("; ", outside) + ". Show it to a vet before the next chicks come, with the inspector's reasons.");
        }

        if (sheet.Condemned.Count > 0 || sheet.DeadOnArrival > 0 || sheet.Lesions is not null)
        {
            yield return new("inspectors-word", "What was condemned, and what a lesion is, is the inspector's word; nothing here judges it. Birds condemned or dead on arrival have causes: ask the inspector and a vet.");
        }

        yield return new("one-batch", "One batch inside or outside its intervals proves little: nine figures in ten should lie inside over the years. Keep every batch in the history, the bad ones too.");
    }
}
