namespace Poultry.Growth.Curves;

/// <summary>The curve families of this library.</summary>
public static class CurveFamilies
{
    /// <summary>Gompertz: the usual law of meat birds; inflection at 37 % of the mature weight.</summary>
    public static CurveFamily Gompertz { get; } = new CurveFamily<GompertzCurve>();

    /// <summary>Logistic: inflection at half the mature weight.</summary>
    public static CurveFamily Logistic { get; } = new CurveFamily<LogisticCurve>();

    /// <summary>von Bertalanffy: inflection at 30 % of the mature weight.</summary>
    public static CurveFamily VonBertalanffy { get; } = new CurveFamily<VonBertalanffyCurve>();

    /// <summary>Richards: a fourth parameter says where the inflection lies.</summary>
    public static CurveFamily Richards { get; } = new CurveFamily<RichardsCurve>();

    /// <summary>López, the generalised Michaelis-Menten law: hatch weight and inflection are free of each other.</summary>
    public static CurveFamily Lopez { get; } = new CurveFamily<LopezCurve>();

    /// <summary>All of them, the usual first.</summary>
    public static IReadOnlyList<CurveFamily> All { get; } = [Gompertz, Logistic, VonBertalanffy, Richards, Lopez];

    /// <summary>The family with this id; null where there is none.</summary>
    /// <param name="id">As in <c>gompertz</c>, in capitals or not.</param>
    public static CurveFamily? Find(string id) => All.FirstOrDefault(family => family.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
