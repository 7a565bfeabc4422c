using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Myopathy;

/// <summary>
/// The events model: what disturbances did to a flock that is otherwise undisturbed. With a dose guessed by the user a share of birds, without one dates only.
/// </summary>
public sealed class EventRisk
{
    /// <summary>Points over which guesses and figures are spread.</summary>
    private const int Points = 8192;

    private readonly double genotype;

    private EventRisk(double genotype) => this.genotype = genotype;

    /// <summary>Equation, sources and range.</summary>
    public static ModelInfo Model { get; } = new(
        "lesion-events",
        "Lesions from a log of disturbances",
        "P = 1 - (1 - b) PROD_e (1 - w_e p_bird,e V(t_e)); p_bird = 1 - (1 - p_musc)^k",
        [
            new("P", "share of birds with a lesion that shows", "-"),
            new("b", "0.06 % (0 to 0.15): lesions of a flock without a notable event, by the lowest of 15 Polish farms", "-"),
            new("w_e", "share of birds in the event: the user's guess, never measured", "-"),
            new("p_bird,e", "share of those birds with a lesion", "-"),
            new("p_bird", "the same", "-"),
            new("p_musc", "share of their muscles, see lesion-flapping", "-"),
            new("k", "4/3 (1 to 2), see lesion-sides", "-"),
            new("V(t_e)", "share of lesions that show, see lesion-visibility", "-"),
        ],
        [LesionSources.Lien2012, LesionSources.Kijowski2009, LesionSources.OwnAssumption],
        "Never held against a flock: nobody has published flaps per bird in the field.",
        HowKnown.Assumption,
        [new ValidityRange("cycles", 0, 20, "cycles"), new ValidityRange("age", 24, 45, "d")]);

    /// <summary>Birds of meat type.</summary>
    public static EventRisk MeatType { get; } = new(1);

    /// <summary>Birds of layer type: none of six had a lesion, so a share up to 46 % cannot be ruled out; the model says 0.</summary>
    public static EventRisk LayerType { get; } = new(0);

    private static Doubt FirstAge => new(-4, 0, 2);

    private static Doubt Sides => new(1, 4.0 / 3, 2);

    private static Doubt Background => new(0, 0.0006, 0.0015);

    /// <summary>What the log says.</summary>
    /// <param name="log">The disturbances; none may lie after killing.</param>
    /// <param name="killAge">When the birds are killed.</param>
    /// <param name="sex">Mixed is half of each.</param>
    /// <param name="isOutdoor">Whether the birds had access to the open: nothing behind the model was measured there.</param>
    /// <param name="level">The chance that the range claims, between 0 and 1.</param>
    /// <exception cref="ArgumentException">A disturbance lies after killing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The level is not between 0 and 1.</exception>
    public EventPrevalence For(DisturbanceLog log, Age killAge, Sex sex, bool isOutdoor = true, double level = 0.90)
    {
        ArgumentNullException.ThrowIfNull(log);
        Require.Share(level);
        if (log.FirstOrDefault(disturbance => disturbance.Age > killAge) is { } late)
        {
            throw new ArgumentException($"\"{late.What}\" at {late.Age} lies after killing at {killAge}; expected an age up to that.", nameof(log));
        }

        EventEffect[] effects = [.. log.Select(disturbance => Effect(disturbance, killAge, sex))];
        IReadOnlyList<Caution> cautions = MyopathyCautions.Of(log, killAge, isOutdoor);
        Disturbance[] dosed = [.. log.Where(disturbance => disturbance.Dose is not null)];
        return new(effects, dosed.Length == 0 ? null : Affected(dosed, killAge.Days, sex, level, cautions), cautions);
    }

    /// <summary>The name of the model and the type of the birds.</summary>
    public override string ToString() => Model.Name + (genotype == 0 ? ", birds of layer type" : ", birds of meat type");

    /// <summary>P = 1 - (1 - b) PROD (1 - w p_bird V)</summary>
    internal double Share(ReadOnlySpan<Disturbance> dosed, double killDays, Sex sex, in Figures figures, Func<Doubt, double> guess)
    {
        double spared = 1 - figures.Background;
        foreach (Disturbance disturbance in dosed)
        {
            double birds = BirdShare(disturbance.Age.Days, sex, guess(disturbance.Dose!.CyclesDoubt), figures);
            spared *= 1 - (guess(disturbance.Dose.ShareDoubt) * birds * LesionVisibility.At(killDays - disturbance.Age.Days));
        }

        return 1 - spared;
    }

    private EventEffect Effect(Disturbance disturbance, Age killAge, Sex sex)
    {
        Duration before = killAge - disturbance.Age;
        Probability susceptible = AgeSusceptibility.Published.Share(disturbance.Age, sex), visible = LesionVisibility.Share(before);
        if (disturbance.Dose is not { } dose)
        {
            return new(disturbance, before, susceptible, visible, null, null, null);
        }

        double muscles = genotype * susceptible.Fraction * FlappingResponse.Share(dose.LikelyCycles, FlappingResponse.Exponent, FlappingResponse.HalfCycles);
        double birds = BirdShare(disturbance.Age.Days, sex, dose.LikelyCycles, Figures.Published);
        return new(
            disturbance,
            before,
            susceptible,
            visible,
            MusclePrevalence.Of(Probability.FromFraction(muscles)),
            BirdPrevalence.Of(Probability.FromFraction(birds)),
            BirdPrevalence.Of(Probability.FromFraction(dose.LikelyShare.Fraction * birds * visible.Fraction)));
    }

    private Estimate<BirdPrevalence> Affected(Disturbance[] dosed, double killDays, Sex sex, double level, IReadOnlyList<Caution> cautions)
    {
        double likely = Share(dosed, killDays, sex, Figures.Published, guess => guess.Likely);
        double[] shares = new double[Points];
        for (int i = 0; i < Points; i++)
        {
            EvenPoint point = new(i);
            (double h, double half) = FlappingLikelihood.OfTrial.Draw(point.Next(), point.Next());
            Figures figures = new(h, half, FirstAge.Quantile(point.Next()), Sides.Quantile(point.Next()), Background.Quantile(point.Next()));
            shares[i] = Share(dosed, killDays, sex, figures, guess => guess.Quantile(point.Next()));
        }

        Array.Sort(shares);
        BirdPrevalence Birds(double share) => BirdPrevalence.Of(Probability.FromFraction(share));
        Interval<BirdPrevalence> range = Interval<BirdPrevalence>.Of(
            Birds(Sorted.Quantile(shares, (1 - level) / 2)), Birds(Sorted.Quantile(shares, (1 + level) / 2)), level);
        return new(Birds(likely), range, Model, cautions);
    }

    /// <summary>The share of birds that flapped which have a lesion: p_bird = 1 - (1 - g S D)^k, of mixed birds the mean of both sexes.</summary>
    private double BirdShare(double days, Sex sex, double cycles, in Figures figures)
    {
        if (sex == Sex.Mixed)
        {
            return (BirdShare(days, Sex.Male, cycles, figures) + BirdShare(days, Sex.Female, cycles, figures)) / 2;
        }

        double muscles = genotype * AgeSusceptibility.Published.ShareAt(days, sex, figures.LaterDays) * FlappingResponse.Share(cycles, figures.Exponent, figures.HalfCycles);
        return LesionSides.OfBirds(muscles, figures.Sides);
    }

    /// <summary>The figures of the model: as published, or as one point of their ranges.</summary>
    internal readonly struct Figures(double exponent, double halfCycles, double laterDays, double sides, double background)
    {
        public static Figures Published => new(FlappingResponse.Exponent, FlappingResponse.HalfCycles, FirstAge.Likely, EventRisk.Sides.Likely, EventRisk.Background.Likely);

        public double Exponent => exponent;

        public double HalfCycles => halfCycles;

        public double LaterDays => laterDays;

        public double Sides => sides;

        public double Background => background;
    }
}
