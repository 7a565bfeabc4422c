using Poultry.Growth.Feeding;
using Poultry.Growth.Primitives;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>The section <c>temperatures</c> of a batch file. It must be there: a house at 21 °C is not taken for granted.</summary>
internal static class BatchTemperatureSection
{
    private const string Expected = "\"standard\", one temperature as in \"14C\", a list of { \"from\", \"temperature\" }, or the name of a .csv file of daily means beside this one";
    private const double LeastCelsius = -20, MostCelsius = 50;

    private static readonly AgedColumn Means = new(
        "mean", [("c", number => number), ("f", number => (number - 32) / 1.8)], IsOptional: false, LeastCelsius, MostCelsius, "the mean temperature of a day, -20 to 50 °C");

    public static Temperatures? Read(JsonSection file, BatchContext context)
    {
        const string Needed = "{ \"moveOut\": \"21d\", \"outside\": \"14C\" } for birds outdoors, or { \"house\": \"standard\" }";
        if (file.Required("temperatures", Needed) is not { } value || JsonSection.Of(value, file.Problems) is not { } section)
        {
            return null;
        }

        JsonValue? house = section.Optional("house"), outside = section.Optional("outside");
        Age? moveOut = section.Quantity<Age>("moveOut", QuantityText.TryAge, age => age.Days is > 0 and <= 120, "an age above 0, up to 120d");
        section.Close();
        if ((outside is null) != (section.Optional("moveOut") is null))
        {
            section.Refuse(outside is null ? "says when the birds go out and not how warm it is there" : "says how warm it is outside and not when the birds go there", Needed);
            return null;
        }

        if (outside is null)
        {
            return house is null ? Missing(section, Needed) : Of(section, house, context, standard: true);
        }

        if (house is not null && house.Text != "standard")
        {
            section.Refuse(house, "is not used before the birds go out", "\"standard\", or nothing");
        }

        return Of(section, outside, context, standard: false) is { } there && moveOut is { } age ? Temperatures.HouseThen(age, there) : null;
    }

    private static Temperatures? Missing(JsonSection section, string expected)
    {
        section.Refuse("says nothing", expected);
        return null;
    }

    private static Temperatures? Of(JsonSection section, JsonValue value, BatchContext context, bool standard)
    {
        if (value.Kind == JsonKind.List)
        {
            return Steps(section, value);
        }

        if (value.Kind == JsonKind.Text && value.Text == "standard" && standard)
        {
            return Temperatures.StandardHouse;
        }

        if (value.Kind == JsonKind.Text && value.Text.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            IReadOnlyList<(Age Age, double?[] Values)> rows = context.Table(value.Text, 1, Means);
            return rows.Count == 0 ? null : Temperatures.ByAge(rows.Select(row => (row.Age, Temperature.FromDegreesCelsius(row.Values[0]!.Value))));
        }

        return section.Quantity<Temperature>(value, QuantityText.TryTemperature, Sane, Expected) is { } one ? Temperatures.Constant(one) : null;
    }

    private static Temperatures? Steps(JsonSection section, JsonValue list)
    {
        int before = section.Problems.Count;
        List<(Age From, Temperature Temperature)> steps = [];
        foreach (JsonValue item in list.Items)
        {
            if (JsonSection.Of(item, section.Problems) is not { } step)
            {
                continue;
            }

            Age? from = step.RequiredQuantity<Age>("from", QuantityText.TryAge, "the age from which it holds, as in 21d");
            Temperature? temperature = step.RequiredQuantity<Temperature>("temperature", QuantityText.TryTemperature, "-20C to 50C", Sane);
            step.Close();
            if (from is { } age && steps.Count > 0 && age <= steps[^1].From)
            {
                step.Refuse("does not come after the one before it", "ages that rise");
            }

            steps.Add((from ?? default, temperature ?? default));
        }

        if (list.Items.Count == 0)
        {
            section.Refuse(list, "is empty", Expected);
        }

        return section.Problems.Count == before ? Temperatures.ByAge(steps) : null;
    }

    private static bool Sane(Temperature temperature) => temperature.DegreesCelsius is >= LeastCelsius and <= MostCelsius;
}
