using Poultry.Growth.Curves;
using Poultry.Growth.Evidence;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Tests.Curves;

/// <summary>The curves on which the contract is tested: parameters like those of real birds, and the corners of each family.</summary>
internal static class CurveCase
{
    /// <summary>Ages at which every case has a weight, between rows of the table.</summary>
    public static double[] AgeDays { get; } = [10.5, 17.3, 24.6, 33.3, 41.9, 50.4, 60.1];

    /// <summary>Parameter sets by family; a new family brings its own.</summary>
    private static Dictionary<string, double[][]> Sets { get; } = new()
    {
        ["gompertz"] = [[7.294, 0.03944, 39.25], [5.685, 0.04073, 36.46], [4.0, 0.034, 41], [3.0, 0.05, -4]],
        ["logistic"] = [[5.0, 0.08, 38], [3.01032, 0.1193, 28.92], [2.5, 0.06, -2]],
        ["von-bertalanffy"] = [[9.924, 0.0265, 41], [9.0, 0.03, 45], [4.0, 0.04, -1]],
        ["richards"] =
        [
            [7.3, 0.039, 39, 0], [7.3, 0.039, 39, 1e-9], [7.3, 0.039, 39, -1e-6], [6.9, 0.045, 44.4, 0.2], [5.0, 0.08, 38, 1],
            [4.0, 0.12, 40, 3], [3.5, 0.3, 45, 20], [9.0, 0.028, 40, -0.3], [9.9, 0.0265, 41, -1.0 / 3], [9.0, 0.02, 30, -0.6],
        ],
        ["lopez"] = [[6.5, 0.042, 50, 2.2], [5.0, 0.045, 40, 3.5], [8.0, 0.04, 70, 1], [5.0, 0.042, 60, 0.8]],
    };

    /// <summary>Every family with each of its parameter sets.</summary>
    public static TheoryData<string, int> OfFamilies
    {
        get
        {
            TheoryData<string, int> cases = [];
            foreach (CurveFamily family in CurveFamilies.All)
            {
                for (int set = 0; set < Sets[family.Id].Length; set++)
                {
                    cases.Add(family.Id, set);
                }
            }

            return cases;
        }
    }

    /// <summary>The cases of the families, an exponential and a table.</summary>
    public static TheoryData<string, int> All
    {
        get
        {
            TheoryData<string, int> cases = OfFamilies;
            cases.Add("exponential", 0);
            cases.Add("table", 0);
            return cases;
        }
    }

    public static CurveFamily Family(string id) => CurveFamilies.Find(id)!;

    public static double[] Parameters(string id, int set) => Sets[id][set];

    public static GrowthCurve Curve(string id, int set) => id switch
    {
        "exponential" => ExponentialCurve.Of(Mass.FromGrams(42), DailyRate.FromPerDay(0.07)),
        "table" => Objective2012Females(),
        _ => Family(id).FromParameters(Sets[id][set]),
    };

    /// <summary>A breeder's printed objectives for females, Indian River Meat, 2012, weekly rows; read in an open transcription.</summary>
    public static TabulatedCurve Objective2012Females()
    {
        double[] grams = [42, 183, 463, 882, 1403, 1973, 2550, 3105, 3615, 4057, 4410];
        return TabulatedCurve.Of(
            "Objectives 2012, females",
            new Citation("Objectives2012", "Performance objectives, Indian River Meat, 2012", HowKnown.Secondary, "weekly body weight"),
            [.. grams.Select((weight, week) => (Age.FromWeeks(week), Mass.FromGrams(weight)))]);
    }
}
