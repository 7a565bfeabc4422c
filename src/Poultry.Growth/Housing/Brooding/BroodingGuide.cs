using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Housing;

/// <summary>How warm and how roomy chicks are kept, by one guide. Guides differ: look at several side by side, and at the chicks.</summary>
public sealed class BroodingGuide
{
    private BroodingGuide(ModelInfo model, params BroodingStage[] stages) => (Model, Stages) = (model, Array.AsReadOnly(stages));

    /// <summary>The chicks are the thermometer.</summary>
    public static Caution WatchTheChicks { get; } = new(
        "watch-the-chicks",
        "Chicks crowded under the heat are cold, chicks at the edge and panting are hot, chicks spread evenly are right: go by them. Hang heat lamps so that they cannot fall, away from litter: they burn barns down.");

    /// <summary>Colorado State University: temperatures by week, at the edge of the hover.</summary>
    public static BroodingGuide ColoradoState2018 { get; } = new(
        Describe(
            "brooding-colorado-state",
            "Brooding temperatures, Colorado State University",
            new Citation("ColoradoState2.502", "Colorado State University Extension 2018, fact sheet 2.502, October 2018", HowKnown.ReadInSource, "temperature at the edge of the hover, 10 to 15 cm (4 to 6 in) above the floor"),
            HowKnown.ReadInSource),
        BroodingStage.Weeks(1, 1, (93, 95)),
        BroodingStage.Weeks(2, 2, (88, 90)),
        BroodingStage.Weeks(3, 3, (83, 85)),
        BroodingStage.Weeks(4, 4, (78, 80)),
        BroodingStage.Weeks(5, 5, (75, 75)),
        BroodingStage.Weeks(6, 6, (70, 70)),
        BroodingStage.Weeks(7, null, (50, 70)));

    /// <summary>University of Missouri: 90 to 95 °F, lowered by 5 °F a week to 70 °F.</summary>
    public static BroodingGuide Missouri { get; } = new(
        Describe(
            "brooding-missouri",
            "Brooding temperatures, University of Missouri",
            new Citation("MissouriBrooding", "University of Missouri Extension, guide on brooding chicks", HowKnown.ReadInSource, "start at 90 to 95 F, lower by 5 F a week to 70 F"),
            HowKnown.ReadInSource),
        BroodingStage.Weeks(1, 1, (90, 95)),
        BroodingStage.Weeks(2, 2, (85, 90)),
        BroodingStage.Weeks(3, 3, (80, 85)),
        BroodingStage.Weeks(4, 4, (75, 80)),
        BroodingStage.Weeks(5, 5, (70, 75)),
        BroodingStage.Weeks(6, null, (70, 70)));

    /// <summary>Clauer's table: temperature, floor, feeder and drinker. Where its weeks overlap (3 and 5) the older stage counts, which gives more room.</summary>
    public static BroodingGuide Clauer { get; } = new(
        Describe(
            "brooding-clauer",
            "Floor, feeder and drinker of small flocks by age, Clauer",
            new Citation("Clauer", "Clauer P., Pennsylvania State University, table of space for small flocks", HowKnown.Secondary, "weeks 1, 2-3, 3-5, 5-8, 8 and over"),
            HowKnown.Secondary),
        BroodingStage.Weeks(1, 1, (92, 95), (0.25, 0.25), (1, 1), (0.5, 0.5)),
        BroodingStage.Weeks(2, 2, (85, 90), (0.5, 0.5), (1.5, 1.5), (0.5, 0.5)),
        BroodingStage.Weeks(3, 4, (80, 85), (0.75, 0.75), (2, 2), (0.5, 0.5)),
        BroodingStage.Weeks(5, 8, (70, 80), (1, 1), (2, 2), (0.75, 0.75)),
        BroodingStage.Weeks(9, null, null, (1.5, 3), (3, 4), (1, 2)));

    /// <summary>A leaflet of pasture growers: the brooder by the time of moving out.</summary>
    public static BroodingGuide PastureLeaflet { get; } = new(
        Describe(
            "brooding-pasture-leaflet",
            "Brooder floor by a leaflet of pasture growers",
            new Citation("PastureLeaflet", "Producers' association, leaflet \"Welcome to Pasture-Raised Poultry\"", HowKnown.Secondary, "brooder of 1 ft2 a bird at 3 weeks"),
            HowKnown.Secondary),
        BroodingStage.Weeks(3, 3, squareFeet: (1, 1)));

    /// <summary>Every guide.</summary>
    public static IReadOnlyList<BroodingGuide> All { get; } = Array.AsReadOnly([ColoradoState2018, Missouri, Clauer, PastureLeaflet]);

    /// <summary>Source and how it is known.</summary>
    public ModelInfo Model { get; }

    /// <summary>The stages, the youngest first.</summary>
    public IReadOnlyList<BroodingStage> Stages { get; }

    /// <summary>The stage of an age; null where the guide says nothing about it.</summary>
    /// <param name="age">Any.</param>
    public BroodingStage? At(Age age) => Stages.FirstOrDefault(stage => stage.Holds(age.Days));

    /// <summary>The name of the model.</summary>
    public override string ToString() => Model.Name;

    private static ModelInfo Describe(string id, string name, Citation source, HowKnown howKnown) => new(
        id,
        name,
        "room, warmth = table(age)",
        [new("age", "age of the chicks by whole weeks", "wk"), new("room", "floor, feeder and drinker of each bird", "ft2, in"), new("warmth", "temperature at the chicks' height", "°F")],
        [source],
        "Advice for small flocks, not measured optima; guides differ by a few degrees and by half of the room.",
        howKnown);
}
