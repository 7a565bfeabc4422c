using Poultry.Growth.Evidence;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Feeding;

/// <summary>Water, ash and fat follow protein by power laws that pass through hatch and maturity.</summary>
internal sealed class SplitComposition : BodyComposition
{
    /// <summary>Enough that the table is within 1e-6 of the equation; a test measures it.</summary>
    private const int Steps = 256;

    /// <summary>Hatch: parts of water, protein, fat and ash at the light end of Caldas 2019, made to add up.</summary>
    private const double HatchProtein = 154 / 975.9, HatchFat = 53 / 975.9, HatchWater = 751 / 975.9, HatchAsh = 17.9 / 975.9;

    private static readonly double LowLog = Math.Log(LeastGrams);
    private static readonly double Step = (Math.Log(MostGrams) - LowLog) / Steps;

    private readonly MaturePart mature;
    private readonly (double Fat, double Water, double Ash) power;

    /// <summary>ln(P/Pm) and its slope by ln W, at equal steps of ln W.</summary>
    private readonly double[] logs = new double[Steps + 1], slopes = new double[Steps + 1];

    public SplitComposition(ModelInfo model, double hatchGrams, MaturePart mature)
    {
        (Model, this.mature) = (model, mature);
        double hatchLog = Math.Log(hatchGrams * HatchProtein / mature.Protein);
        double Power(double hatchPart, double maturePart) => Math.Log(hatchGrams * hatchPart / maturePart) / hatchLog;
        power = (Power(HatchFat, mature.Fat), Power(HatchWater, mature.Water), Power(HatchAsh, mature.Ash));
        Tabulate();
    }

    public static MaturePart Males { get; } = new(Protein: 1480, Fat: 1080, LateFat: 0, Water: 3.80 * 1480, Ash: 0.13 * 1480);

    /// <summary>Fat of 1540 g at maturity, of which 0.73 x 1190 as in males and the rest late, by the square of maturity.</summary>
    public static MaturePart Females { get; } = new(Protein: 1190, Fat: 868.7, LateFat: (1540 / 868.7) - 1, Water: 3.34 * 1190, Ash: 0.19 * 1190);

    public static ModelInfo MaleInfo { get; } = Info(
        "composition-cobb700-male", "Body protein and fat of cockerels", "W = P + L + 3.80 Pm u^b_w + 0.13 Pm u^b_a; L = 1080 u^b_l; u = P/Pm; Pm = 1480", 8.37);

    public static ModelInfo FemaleInfo { get; } = Info(
        "composition-cobb700-female", "Body protein and fat of pullets",
        "W = P + L + 3.34 Pm u^b_w + 0.19 Pm u^b_a; L = 868.7 u^b_l (1 + 0.7727 u^2); u = P/Pm; Pm = 1190", 6.93);

    public override ModelInfo Model { get; }

    internal override (double Protein, double Fat) At(double grams)
    {
        double u = LogMaturity(grams);
        return (mature.Protein * Math.Exp(u), Fat(u));
    }

    /// <summary>The equation itself, solved: what the table is held against.</summary>
    internal double Solve(double grams)
    {
        Balance balance = new(this, grams);
        RootFinding.Bracketed(ref balance, Math.Log(1e-5), Math.Log(10), 0, out double u);
        return mature.Protein * Math.Exp(u);
    }

    /// <summary>ln(P/Pm) at a weight, by the cubic through the two steps around it.</summary>
    private double LogMaturity(double grams)
    {
        double place = (Math.Log(grams) - LowLog) / Step;
        int i = Math.Clamp((int)place, 0, Steps - 1);
        double s = place - i, open = 1 - s;
        return (logs[i] * open * open * (1 + (2 * s))) + (logs[i + 1] * s * s * (3 - (2 * s)))
            + (Step * s * open * ((slopes[i] * open) - (slopes[i + 1] * s)));
    }

    private double Fat(double u) => mature.Fat * Math.Exp(power.Fat * u) * (1 + (mature.LateFat * Math.Exp(2 * u)));

    private double Water(double u) => mature.Water * Math.Exp(power.Water * u);

    private double Ash(double u) => mature.Ash * Math.Exp(power.Ash * u);

    private void Tabulate()
    {
        for (int i = 0; i <= Steps; i++)
        {
            double grams = Math.Exp(LowLog + (i * Step));
            double protein = Solve(grams);
            double u = Math.Log(protein / mature.Protein);

            // dW/du, term by term; the late fat rises by two powers more than the rest.
            double late = mature.LateFat * Math.Exp(2 * u);
            double gramsPerLog = protein + (Fat(u) * (power.Fat + (2 * late / (1 + late)))) + (power.Water * Water(u)) + (power.Ash * Ash(u));
            (logs[i], slopes[i]) = (u, grams / gramsPerLog);
        }
    }

    private static ModelInfo Info(string id, string name, string equation, double sum) => new(
        id,
        name,
        equation,
        [
            new("W", "live weight", "g"),
            new("P", "body protein", "g"),
            new("Pm", "body protein at maturity", "g"),
            new("L", "body fat", "g"),
            new("u", "maturity of protein", "-"),
            new("b_w", "power of water, through hatch and maturity", "-"),
            new("b_a", "power of ash, likewise", "-"),
            new("b_l", "power of fat, likewise", "-"),
        ],
        [FeedingSources.Cobb700, FeedingSources.Caldas2019, FeedingSources.Gous1999],
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"Not measured between hatch and maturity: the powers pass through both. The mature parts add to {sum} kg of printed live weight. Fat leaves the range that Caldas 2019 measured (10.1 %) above about 1.8 kg in cockerels and 1.0 kg in pullets: both sources cannot hold for heavy birds. The late rise of fat in pullets is an assumption (without it 13.6 % fat at 1 kg)."),
        HowKnown.Assumption,
        [new ValidityRange("live weight", 0.04, 4, "kg")]);

    /// <summary>Mature parts in g.</summary>
    internal sealed record MaturePart(double Protein, double Fat, double LateFat, double Water, double Ash);

    private readonly struct Balance(SplitComposition body, double grams) : IScalarFunction
    {
        public double At(double x) => (body.mature.Protein * Math.Exp(x)) + body.Fat(x) + body.Water(x) + body.Ash(x) - grams;
    }
}
