using Poultry.Growth.Fitting;
using Poultry.Growth.Numerics;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks.Studies;

/// <summary>A batch as it really grows, and weigh-ins of it: 10 to 60 birds each, spread within a sex U(8, 14 %), known only from the birds weighed.</summary>
internal sealed class SimulatedBatch
{
    private SimulatedBatch(Func<double, double> kilograms, IReadOnlyList<WeighIn> weighIns) => (Kilograms, WeighIns) = (kilograms, weighIns);

    public Func<double, double> Kilograms { get; }

    public IReadOnlyList<WeighIn> WeighIns { get; }

    public static SimulatedBatch Draw(StudyRow row, long seed, int batch)
    {
        RandomStream truth = new(seed, batch, 11);
        Func<double, double> kilograms = row.Truth(ref truth);
        RandomStream random = new(seed, batch, 12);
        double spread = 0.08 + (0.06 * random.NextUniform());
        double drift = row.DriftPerWeek * random.NextNormal();
        List<WeighIn> weighIns = [];
        foreach (double planned in row.Days)
        {
            double days = row.Irregular ? Math.Max(7, planned + Math.Round((6 * random.NextUniform()) - 3)) : planned;
            int times = row.Irregular && random.NextUniform() < 0.5 ? 2 : 1;
            for (int time = 0; time < times; time++)
            {
                double off = Math.Exp((row.WeighInError * random.NextNormal()) + (drift * days / 7));
                weighIns.Add(Weigh(row, ref random, days, kilograms(days), spread, off));
            }
        }

        return new SimulatedBatch(kilograms, weighIns);
    }

    private static WeighIn Weigh(StudyRow row, ref RandomStream random, double days, double kilograms, double spread, double off)
    {
        Mass[] birds = new Mass[10 + (int)(51 * random.NextUniform())];
        double ratio = SexDimorphism.FemaleRatioAt(Age.FromDays(days));
        for (int i = 0; i < birds.Length;)
        {
            double factor = !row.IsMixed ? 1 : random.NextUniform() < 0.5 ? 2 / (1 + ratio) : 2 * ratio / (1 + ratio);
            double bird = factor * (1 + (spread * random.NextNormal()));
            bool caught = !row.SlowFirst || bird < 1 || random.NextUniform() < 0.5;
            if (bird > 0.2 && caught)
            {
                birds[i++] = Mass.FromKilograms(bird * kilograms * off);
            }
        }

        // Kept as mean and deviation: what a projection uses of single birds.
        WeighIn singly = WeighIn.Birds(Age.FromDays(days), birds);
        return WeighIn.Mean(singly.Age, singly.MeanWeight, singly.BirdsWeighed, singly.StandardDeviation);
    }
}
