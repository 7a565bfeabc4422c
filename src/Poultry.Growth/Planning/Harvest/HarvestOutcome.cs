namespace Poultry.Growth.Planning;

/// <summary>What came out of one fate for one choice.</summary>
internal readonly record struct HarvestOutcome
{
    private HarvestOutcome(double revenue, double cost, double soldKilograms, double filled, LotOutcome plant) =>
        (Revenue, Cost, SoldKilograms, Filled, Plant) = (revenue, cost, soldKilograms, filled, plant);

    public double Head { get; init; }

    public double MeanKilograms { get; init; }

    public double FeedKilograms { get; init; }

    /// <summary>Of a batch on two days: birds of the earlier.</summary>
    public double FirstBirds { get; init; }

    /// <summary>Of a batch on two days: mean weight on the earlier.</summary>
    public double FirstKilograms { get; init; }

    /// <summary>Of a batch on two days: mean weight on the later.</summary>
    public double SecondKilograms { get; init; }

    /// <summary>Of a batch on two days: the heavier of the loads that the floor carries.</summary>
    public double FloorKilograms { get; init; }

    public double Revenue { get; }

    public double Cost { get; }

    public double SoldKilograms { get; }

    /// <summary>The part of the packs asked for that is filled.</summary>
    public double Filled { get; }

    public LotOutcome Plant { get; }

    public double Margin => Revenue - Cost;

    /// <summary>Sells packs and keeps the account.</summary>
    /// <inheritdoc cref="Selling.Of"/>
    public static HarvestOutcome Of(BatchPlan plan, DrawnInputs inputs, Span<double> packs, LotOutcome plant, double costAtHome)
    {
        (double revenue, double sold, double filled) = Selling.Of(plan, inputs, packs, plant.LesionKilograms);
        return new(revenue, costAtHome + plant.Charges, sold, filled, plant);
    }
}
