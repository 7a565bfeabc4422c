using System.CommandLine;
using Poultry.Growth.Carcass;

namespace Poultry.Growth.Calculators.Carcass;

/// <summary><c>cuts</c>: what the plant hands back, as weights, packs and money.</summary>
internal static class CutsCommand
{
    /// <summary>Invented prices from the root of the repository.</summary>
    public const string DemoPrices = "samples/Poultry.Growth.Calculators/data/meadow-prices.csv";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        CalculationCommand command = new(
            "cuts",
            "What comes back from the plant: carcass, cuts and packs, what sells of them, and how many birds to have cut.",
            "--live 2.9kg --birds 300 --live-state full-fed --off-feed 12h --order 40% --prices " + DemoPrices + " --cut-fee 1.50 --pack-cost 0.20");
        BirdOptions birds = BirdOptions.AddTo(command);
        PlantOptions plant = PlantOptions.AddTo(command);
        CutOptions cuts = CutOptions.AddTo(command);
        CommonOptions common = CommonOptions.AddTo(command, intervals: false, chart: true);
        command.SetAction(parsed =>
        {
            OptionWords words = new(parsed);
            common.Read(words);
            DeliveredBirds? delivered = birds.Read(words);
            PlantConditions? conditions = plant.Read(words, birds);
            PlantCharges charges = plant.Charges(words);
            CutSet? set = cuts.Set(words, conditions?.Dressing);
            CutOrder? order = cuts.Order(words, set);
            IReadOnlyList<PackOffer> offers = cuts.Offers(words);
            if (words.Problems.Count > 0)
            {
                return Exit.Refuse(errors, words.Problems);
            }

            PlantReturn back = PlantReturn.Of(delivered!, conditions!, order!, offers, charges);
            CutAdvice? advice = offers.Count > 0 ? CutAdvice.Of(delivered!, conditions!, set!, offers, charges) : null;
            return Print(new(back, set!, advice, birds.Sex, birds.AgeAtKilling, birds.SpreadIsAssumed), common, output, errors);
        });
        return command;
    }

    private static int Print(CutsAnswer answer, CommonOptions common, TextWriter output, TextWriter errors) => common.Answer(
        isThere: true,
        () => CutsChart.Of(answer, common.Units),
        () => CutsDocument.Of(answer).ToJson(),
        page => CutsPage.Print(answer, page),
        output,
        errors);
}
