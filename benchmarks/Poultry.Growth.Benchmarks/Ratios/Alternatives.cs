using System.Diagnostics;
using System.Globalization;
using System.Text;
using Poultry.Growth.Curves;
using Poultry.Growth.Fitting;
using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Benchmarks.Ratios;

/// <summary>The nine points and a thousand invented batches for other programs to fit (benchmarks/alternatives/run), and one table of what all took and found.</summary>
internal static class Alternatives
{
    private const int Batches = 1000;

    /// <summary>Writes fits.csv: fit, age in days, kg. Fit 0 is the nine points; the others follow Gompertz curves with a scatter of 3 %.</summary>
    public static void Write(string folder)
    {
        StringBuilder text = new("fit,days,kg\n");
        foreach ((int fit, double[] kilograms) in Fits().Index())
        {
            for (int i = 0; i < kilograms.Length; i++)
            {
                text.Append(CultureInfo.InvariantCulture, $"{fit},{NinePoints.AgeDays[i]},{kilograms[i]}\n");
            }
        }

        File.WriteAllText(Path.Combine(folder, "fits.csv"), text.ToString());
    }

    /// <summary>Fits all of them, and sets what the others left in the folder beside it.</summary>
    public static void Table(string folder, TextWriter output)
    {
        WeighInSeries[] series = [.. Fits().Select(NinePoints.SeriesOf)];
        Result ours = Measure($"Poultry.Growth {typeof(GrowthFit).Assembly.GetName().Version}, public fit, own start, standard errors", fit => Parameters(GrowthFit.Of(series[fit], errors: ErrorModel.EqualVariance)));
        double[][] kilograms = [.. Fits()];
        Result mathNet = Measure("MathNet.Numerics 5.0.0, Levenberg-Marquardt as it comes, start and derivatives given", fit => [.. MathNetFit.Fit(kilograms[fit]).MinimizingPoint]);
        Result mathNetToTolerance = Measure("the same, to a tolerance of 1e-9", fit => [.. MathNetFit.FitToTolerance(kilograms[fit]).MinimizingPoint]);
        output.WriteLine("| program | nine points | of a thousand | times this library's | found | furthest from this library's A, k, t* |");
        output.WriteLine("|---|---|---|---|---|---|");
        foreach (Result result in (Result[])[ours, mathNet, mathNetToTolerance, .. Directory.EnumerateFiles(folder, "*-*.csv").Append(Path.Combine(folder, "scipy.csv")).Where(File.Exists).Order().Select(Read)])
        {
            int found = result.Parameters.Skip(1).Count(p => double.IsFinite(p[0]));
            double furthest = result.Parameters.Zip(ours.Parameters).Where(pair => double.IsFinite(pair.First[0])).Max(pair => pair.First.Zip(pair.Second, (theirs, own) => Math.Abs((theirs / own) - 1)).Max());
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {result.Name} | {result.OneMicroseconds:0.#} µs | {result.BatchMicroseconds:0.#} µs | {result.OneMicroseconds / ours.OneMicroseconds:0.#}, {result.BatchMicroseconds / ours.BatchMicroseconds:0.#} | {found} | {furthest:0.0E+0} |"));
        }
    }

    private static IEnumerable<double[]> Fits()
    {
        yield return NinePoints.Kilograms;
        for (int batch = 0; batch < Batches; batch++)
        {
            GrowthCurve curve = CurveFamilies.Gompertz.FromParameters(4.5 + (0.003 * batch), 0.038 + (0.00001 * (batch % 700)), 36 + (batch % 11));
            int number = batch;
            yield return [.. NinePoints.AgeDays.Select((days, i) => Math.Round(curve.WeightAt(Age.FromDays(days)).Kilograms * (1 + (0.03 * Math.Sin(12.9898 * ((10 * number) + i)))), 4))];
        }
    }

    private static double[] Parameters(GrowthFit fit) => fit.Curve is null ? [double.NaN, double.NaN, double.NaN] : [.. fit.Parameters.Select(parameter => parameter.Value)];

    private static Result Measure(string name, Func<int, double[]> fit)
    {
        double Once(int from, int to, int times)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < times; i++)
            {
                for (int number = from; number < to; number++)
                {
                    fit(number);
                }
            }

            return Stopwatch.GetElapsedTime(start).TotalMicroseconds / times / (to - from);
        }

        Once(0, Batches + 1, 40);
        double one = Enumerable.Range(0, 5).Select(_ => Once(0, 1, 1000)).Order().ElementAt(2);
        double many = Enumerable.Range(0, 5).Select(_ => Once(1, Batches + 1, 1)).Order().ElementAt(2);
        return new(name, one, many, [.. Enumerable.Range(0, Batches + 1).Select(fit)]);
    }

    private static Result Read(string path)
    {
        string[][] lines = [.. File.ReadLines(path).Select(line => line.Split(';'))];
        return new(lines[0][0], Number(lines[0][1]), Number(lines[0][2]), [.. lines.Skip(1).Select(cells => cells.Select(Number).ToArray())]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private sealed record Result(string Name, double OneMicroseconds, double BatchMicroseconds, double[][] Parameters);
}
