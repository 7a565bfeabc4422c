using Poultry.Growth.Evidence;
using Poultry.Growth.Housing;

namespace Poultry.Growth.Tests.Housing;

/// <summary>A limit of nobody's, for one thing at a time.</summary>
internal static class MadeUpLimit
{
    public static Limit On(
        LimitSubject subject, double? value, LimitComparison comparison = LimitComparison.AtMost, InstrumentKind kind = InstrumentKind.Law, int step = 0, HouseKind? house = null, params LimitClause[] when) => new()
        {
            Instrument = new("general", "A limit", "2027", kind),
            Scope = "",
            Quantity = "space",
            Printed = "made up",
            Comparison = comparison,
            Subject = subject,
            Value = value,
            HowKnown = HowKnown.Assumption,
            Step = step,
            House = house,
            When = when,
        };
}
