using Poultry.Growth.Housing;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Limits as a table, each figure as its text prints it.</summary>
internal static class StandardsPage
{
    public static void Print(StandardsAnswer answer, Page page)
    {
        if (answer.Limits.Count == 0)
        {
            page.Line("No limit is known that fits. That the library knows none does not mean that there is none: ask the authority.");
            return;
        }

        page.Line(Numbers.Whole(answer.Limits.Count) + " limits");
        foreach (IGrouping<Instrument, Limit> text in answer.Limits.GroupBy(limit => limit.Instrument))
        {
            page.Title(text.Key + ", " + Codes.Of(text.Key.Kind));
            page.Table(["<quantity", "", "<limit", "<scope and conditions", "<vouch for", "<how known"], text.Select(limit => (IReadOnlyList<string>)
            [
                limit.Quantity,
                Sign(limit.Comparison),
                limit.Printed,
                limit.Scope,
                limit.Requires ?? "",
                limit.IsUnverified ? "memory, unverified" : Numbers.Words(limit.HowKnown),
            ]));
        }

        page.Cautions(answer.Cautions);
        page.Sources(answer.Sources);
    }

    private static string Sign(LimitComparison comparison) => comparison switch
    {
        LimitComparison.Below => "<",
        LimitComparison.AtMost => "<=",
        LimitComparison.AtLeast => ">=",
        LimitComparison.Above => ">",
        _ => "=",
    };
}
