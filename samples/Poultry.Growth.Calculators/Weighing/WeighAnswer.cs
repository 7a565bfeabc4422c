using Poultry.Growth.Evidence;
using Poultry.Growth.Files;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Weighing;

/// <summary>Everything that tables, JSON and chart show of weigh-ins by themselves.</summary>
internal sealed class WeighAnswer
{
    /// <summary>A spread so many times the precision asks for a hundred million birds: a figure is in another unit.</summary>
    private const double WidestSpread = 5000;

    private WeighAnswer(WeighInReading reading, double precision, double level, int? flock)
    {
        (Reading, Precision, Level, Flock) = (reading, precision, level, flock);
        ByAge = Uniformity.ByAge(reading.Series!);
        Spread = reading.Series!.PooledCoefficientOfVariation;
    }

    public WeighInReading Reading { get; }

    public BatchCalendar Calendar => BatchCalendar.Of(Reading);

    /// <summary>Half the width of the interval of the mean that is wanted, as a fraction.</summary>
    public double Precision { get; }

    public double Level { get; }

    public int? Flock { get; }

    public IReadOnlyList<Uniformity> ByAge { get; }

    /// <summary>CV between birds over all weigh-ins, as a fraction; null where none shows it.</summary>
    public double? Spread { get; }

    public IReadOnlyList<Caution> Cautions => [.. ByAge.SelectMany(age => age.Cautions).Distinct()];

    public static IReadOnlyList<Citation> Sources => [.. Uniformity.Model.Citations.Concat(BirdsToWeigh.Model.Citations).DistinctBy(source => source.Key)];

    public static WeighAnswer To(WeighInReading reading, double precision, double level, int? flock) => new(reading, precision, level, flock);

    /// <summary>Where the flock's mean lies; the flock's size counts where it is known and not smaller than the sample.</summary>
    public Interval<Mass> MeanInterval(Uniformity age) => age.MeanInterval(Level, Flock >= age.Birds ? Flock : null);

    /// <summary>How many birds to weigh at this spread; null where it is unknown, birds were all alike, or so far apart that no flock holds so many.</summary>
    public int? BirdsFor(double? spread, int? flock) =>
        spread is > 0 and { } variation && (flock is not null || variation < WidestSpread * Precision)
            ? BirdsToWeigh.For(variation, Precision, Level, flock)
            : null;
}
