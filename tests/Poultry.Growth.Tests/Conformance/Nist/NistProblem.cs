using System.Globalization;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Tests.Conformance.Nist;

/// <summary>One data set of the collection with its model, its two starts and its certified answer.</summary>
internal abstract class NistProblem
{
    public static readonly string[] Names =
    [
        "Misra1a", "Chwirut2", "Chwirut1", "Lanczos3", "Gauss1", "Gauss2", "DanWood", "Misra1b",
        "Kirby2", "Hahn1", "Nelson", "MGH17", "Lanczos1", "Lanczos2", "Gauss3", "Misra1c", "Misra1d", "Roszman1", "ENSO",
        "MGH09", "Thurber", "BoxBOD", "Rat42", "MGH10", "Eckerle4", "Rat43", "Bennett5",
    ];

    private protected NistProblem(string name)
    {
        Name = name;
        string[][] observations = [.. Rows(name).Skip(1)];
        Responses = [.. observations.Select(row => name == "Nelson" ? Math.Log(Number(row[0])) : Number(row[0]))];
        Predictors = [.. observations.SelectMany(row => row.Skip(1).Select(Number))];
        string[][] parameters = [.. Rows("nist_certified_params").Where(row => row[0] == name)];
        Starts = [[.. parameters.Select(row => Number(row[2]))], [.. parameters.Select(row => Number(row[3]))]];
        Certified = [.. parameters.Select(row => Number(row[4]))];
        CertifiedErrors = [.. parameters.Select(row => Number(row[5]))];
        string[] summary = Rows("nist_summary").Single(row => row[0] == name);
        Level = summary[1];
        CertifiedSumOfSquares = Number(summary[5]);
    }

    public string Name { get; }

    /// <summary>NIST's level of difficulty.</summary>
    public string Level { get; }

    public double[] Responses { get; }

    public double[] Predictors { get; }

    public double[][] Starts { get; }

    public double[] Certified { get; }

    public double[] CertifiedErrors { get; }

    public double CertifiedSumOfSquares { get; }

    /// <summary>
    /// Observations less parameters. The file of Rat43 prints 9, a slip: it has 15 observations and 4 parameters, and its certified
    /// residual deviation, 2.8262414662E+01, is the root of 8.7864049080E+03 / 11.
    /// </summary>
    public int DegreesOfFreedom => Responses.Length - Certified.Length;

    public static NistProblem Of(string name) => name switch
    {
        "Misra1a" or "BoxBOD" => new NistProblem<Misra1a>(name),
        "Misra1b" => new NistProblem<Misra1b>(name),
        "Misra1c" => new NistProblem<Misra1c>(name),
        "Misra1d" => new NistProblem<Misra1d>(name),
        "Chwirut1" or "Chwirut2" => new NistProblem<Chwirut>(name),
        "Lanczos1" or "Lanczos2" or "Lanczos3" => new NistProblem<Lanczos>(name),
        "Gauss1" or "Gauss2" or "Gauss3" => new NistProblem<TwoPeaks>(name),
        "DanWood" => new NistProblem<DanWood>(name),
        "Kirby2" => new NistProblem<Kirby2>(name),
        "Hahn1" or "Thurber" => new NistProblem<RatioOfCubics>(name),
        "Nelson" => new NistProblem<Nelson>(name),
        "MGH09" => new NistProblem<Mgh09>(name),
        "MGH10" => new NistProblem<Mgh10>(name),
        "MGH17" => new NistProblem<Mgh17>(name),
        "Roszman1" => new NistProblem<Roszman1>(name),
        "ENSO" => new NistProblem<Enso>(name),
        "Rat42" => new NistProblem<Rat42>(name),
        "Rat43" => new NistProblem<Rat43>(name),
        "Eckerle4" => new NistProblem<Eckerle4>(name),
        "Bennett5" => new NistProblem<Bennett5>(name),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such data set."),
    };

    /// <summary>Fits the model from start 1 or 2.</summary>
    public abstract NistFit Fit(int start, LeastSquaresOptions options);

    /// <summary>The largest difference between the analytic Jacobian and central differences at the certified values, each column over its largest element.</summary>
    public abstract double JacobianError();

    private static IEnumerable<string[]> Rows(string file) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Conformance", "Nist", "data", file + ".csv"))
            .Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split(','));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
