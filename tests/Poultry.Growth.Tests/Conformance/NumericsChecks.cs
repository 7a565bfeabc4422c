using Poultry.Growth.Numerics;
using Poultry.Growth.Tests.Conformance.Nist;
using static Poultry.Growth.Tests.Conformance.OutsideCheck;

namespace Poultry.Growth.Tests.Conformance;

/// <summary>
/// Quantiles and tails against R, which prints fifteen digits; the incomplete beta and gamma functions underneath keep twelve, and twelve are asked for. Eleven of quantiles with
/// 10,000 degrees of freedom or more: beyond a thousand the incomplete beta function loses some, and beyond 20,000 an expansion takes over.
/// </summary>
internal static class NumericsChecks
{
    private const string R = "R 4.2.2";
    private const string Certified = "NIST StRD, certified values of eleven digits, certificate of 1e-12 asked for";

    public static IReadOnlyList<OutsideCheck> All { get; } =
    [
        Nist("nist-p", "parameters of 27 nonlinear problems from both starts", 10, fit => fit.ParameterDigits, _ => true),
        Nist("nist-se", "their standard errors, but for Lanczos1, which was made without error", 9, fit => fit.StandardErrorDigits, fit => fit.Result.Status != LeastSquaresStatus.ExactFit),
        .. Quantiles(
            1e-12,
            (0.5, 3, 0),
            (0.95, 1, 6.31375151467504),
            (0.975, 1, 12.7062047361747),
            (0.9999, 1, 3183.0987571185),
            (1e-06, 1, -318309.886182743),
            (0.95, 2, 2.91998558035372),
            (0.975, 3, 3.18244630528371),
            (0.95, 6, 1.9431802805153),
            (0.995, 11, 3.10580651553928),
            (0.9995, 30, 3.64595863504206),
            (0.05, 8, -1.8595480375309),
            (0.6, 5, 0.267180865704145),
            (1e-06, 6, -17.8303145006555),
            (1e-20, 4, -131607.401282585),
            (0.975, 120, 1.97993040508242),
            (0.975, 1000, 1.96233908082641),
            (0.975, 2.5, 3.57465484200369),
            (0.25, 7, -0.711141778081787),
            (0.75, 7, 0.711141778081787)),
        .. Quantiles(
            1e-11,
            (0.975, 1e4, 1.96020123989063),
            (0.6, 1e4, 0.253353843445727),
            (1e-20, 1e4, -9.2824741532543),
            (0.975, 1.00001e5, 1.95998770729738),
            (0.6, 1.00001e5, 0.25334777715044),
            (1e-20, 1.00001e5, -9.26435015617507),
            (0.975, 2147483646, 1.95996398564473),
            (1e-20, 2147483646, -9.2623401833832),
            (0.975, double.PositiveInfinity, 1.95996398454005),
            (0.6, double.PositiveInfinity, 0.2533471031358)),
        .. new (double P, double Expected)[]
        {
            (1e-300, -37.0470962993612),
            (1e-20, -9.26234008979841),
            (1e-06, -4.7534243088229),
            (0.025, -1.95996398454005),
            (0.3, -0.524400512708041),
            (0.5, 0),
            (0.9, 1.2815515655446),
            (0.95, 1.64485362695147),
            (0.975, 1.95996398454005),
            (0.999999, 4.75342430881709),
        }.Select(row => Call("qnorm", [row.P], row.Expected, 1e-12, () => Distributions.NormalQuantile(row.P))),
        .. new (double X, double Expected)[]
        {
            (-10, 7.61985302416053e-24),
            (-5, 2.86651571879194e-07),
            (-1.96, 0.0249978951482204),
            (-0.1, 0.460172162722971),
            (0, 0.5),
            (0.5, 0.691462461274013),
            (1, 0.841344746068543),
            (2.5, 0.993790334674224),
            (6, 0.999999999013412),
        }.Select(row => Call("pnorm", [row.X], row.Expected, 1e-12, () => Distributions.NormalProbability(row.X))),
        .. new (double X, double Degrees, double Expected)[]
        {
            (0, 3, 1),
            (0.001, 1, 0.97477287936996),
            (3.841458820694124, 1, 0.05),
            (0.5, 2, 0.778800783071405),
            (10, 2, 0.00673794699908547),
            (7.8, 3, 0.0503310978598534),
            (200, 3, 4.21854110719204e-43),
            (1000, 5, 6.0100776879208e-214),
            (10, 10, 0.440493285065212),
            (120, 100, 0.0844066810936918),
            (4.2, 2.5, 0.177847212756407),
        }.Select(row => Call("upper pchisq", [row.X, row.Degrees], row.Expected, 1e-12, () => Distributions.ChiSquareUpperTail(row.X, row.Degrees))),
        .. new (double X, double Numerator, double Denominator, double Expected)[]
        {
            (0, 2, 5, 1),
            (0.5, 1, 6, 0.506021422888184),
            (4, 1, 6, 0.092426311531675),
            (1, 3, 5, 0.464854789993635),
            (30, 3, 5, 0.00127004155368554),
            (3.06, 2, 149, 0.0498455267065062),
            (1000, 2, 149, 4.47470122239053e-87),
            (4, 10, 1, 0.372106394257027),
            (0.01, 1, 1000, 0.920364369023604),
            (4, 50, 60, 2.62893831703958e-07),
            (2.2, 1.5, 7.5, 0.179559537626533),
        }.Select(row => Call("upper pf", [row.X, row.Numerator, row.Denominator], row.Expected, 1e-12, () => Distributions.FUpperTail(row.X, row.Numerator, row.Denominator))),
    ];

    public static IReadOnlyList<string> NotChecked { get; } = [];

    /// <summary>Whole digits up to a cap: those behind differ from machine to machine.</summary>
    private static OutsideCheck Nist(string id, string what, int cap, Func<NistFit, double> digits, Func<NistFit, bool> where)
    {
        var fits = NistFit.Tight.Where(one => where(one.Fit));
        return Read(id, what + ": digits of the worst", Certified, "digits", cap, 0, () => Math.Min(cap, Math.Floor(fits.Min(one => digits(one.Fit))))) with
        {
            Kind = CheckKind.OpenDataset,
            Figures = () => fits.Sum(one => one.Problem.Certified.Length),
        };
    }

    private static IEnumerable<OutsideCheck> Quantiles(double tolerance, params (double P, double Degrees, double Expected)[] rows) =>
        rows.Select(row => Call("qt", [row.P, row.Degrees], row.Expected, tolerance, () => Distributions.StudentQuantile(row.P, row.Degrees)));

    /// <summary>A call of R by name, its arguments to six digits.</summary>
    private static OutsideCheck Call(string name, double[] arguments, double expected, double tolerance, Func<double> computed)
    {
        string call = name + "(" + string.Join(", ", arguments.Select(argument => FormattableString.Invariant($"{argument:G6}"))) + ")";
        return Recomputed(call, name.StartsWith('q') ? "quantile" : "probability", R, "-", expected, tolerance * Math.Abs(expected), computed);
    }
}
