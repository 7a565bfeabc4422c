using System.Globalization;
using OxyPlot;

namespace Poultry.Growth.Calculators.Report;

/// <summary>How a report looks: dark text on white, one column on a phone, two for figures on a screen and on paper, nothing wider than its page.</summary>
internal static class ReportStyle
{
    /// <summary>The colours of the charts, so that words and drawings are of one piece. A tint carries no meaning of its own.</summary>
    public static string Sheet { get; } = $$"""

        :root { color-scheme: light; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
        * { box-sizing: border-box; }
        body { margin: 0 auto; max-width: 66rem; padding: 1rem; font: 1rem/1.5 "Helvetica Neue", Helvetica, Arial, sans-serif; color: {{Hex(ChartStyle.Ink)}}; background: #FFFFFF; overflow-wrap: break-word; }
        h1 { margin: 0; font-size: 1.75rem; line-height: 1.2; }
        h2 { margin: 2.5rem 0 0.75rem; padding-top: 0.75rem; border-top: 1px solid {{Hex(ChartStyle.Grid)}}; font-size: 1.25rem; line-height: 1.3; }
        h3 { margin: 1.5rem 0 0.5rem; font-size: 1rem; }
        p, ul { margin: 0.5rem 0; max-width: 44rem; }
        ul { padding-left: 1.2rem; }
        li { margin: 0.35rem 0; }
        .sources { font-size: 0.8125rem; line-height: 1.4; }
        .sources li { margin: 0.2rem 0; }
        header p { color: {{Hex(ChartStyle.Faint)}}; }
        code { font-size: 0.9rem; overflow-wrap: anywhere; }
        code span { white-space: nowrap; }
        .decision { margin-top: 1rem; padding: 1rem; border-left: 0.3rem solid {{Hex(ChartStyle.Curve)}}; background: {{Tint}}; }
        .decision h2 { margin: 0; padding: 0; border: 0; font-size: 1rem; color: {{Hex(ChartStyle.Faint)}}; background: {{Tint}}; }
        .headline { margin: 0.25rem 0 0.75rem; font-size: 1.4rem; font-weight: bold; line-height: 1.25; }
        dl { display: grid; grid-template-columns: 1fr 1fr; gap: 0.9rem 1rem; margin: 0.75rem 0; }
        dt { font-size: 0.875rem; color: {{Hex(ChartStyle.Faint)}}; background: {{Tint}}; }
        dd { margin: 0; font-size: 0.875rem; line-height: 1.4; }
        dd.amount { font-size: 1.3rem; font-weight: bold; font-variant-numeric: tabular-nums; line-height: 1.3; }
        .figures { display: grid; grid-template-columns: minmax(0, 1fr); gap: 1.5rem 2rem; margin: 1rem 0; align-items: start; }
        .figures div { min-width: 0; }
        .figures table { margin-top: 0; max-width: none; }
        figure { margin: 0 0 1rem; min-width: 0; max-width: 36rem; }
        figcaption { font-size: 0.9375rem; line-height: 1.4; }
        svg { display: block; width: 100%; height: auto; }
        .legend { display: flex; flex-wrap: wrap; gap: 0.1rem 1rem; margin: 0.35rem 0; padding: 0; max-width: none; list-style: none; font-size: 0.8125rem; }
        .legend li { display: flex; align-items: center; min-width: 0; margin: 0; overflow-wrap: anywhere; }
        .sign { flex: none; display: inline-block; width: 1.4rem; margin-right: 0.4rem; border: 0 solid; }
        .band { height: 0.8rem; background: currentColor; }
        .line { border-top-width: 0.19rem; }
        .dash { border-top: 0.15rem dashed; }
        .dot { width: 0.6rem; border-width: 0.3rem; border-radius: 50%; }
        .diamond { width: 0.6rem; border-width: 0.3rem; transform: rotate(45deg); }
        .cross { width: auto; font-weight: bold; font-size: 1.1rem; line-height: 1; }
        .cross::before { content: "\00D7"; }
        table { width: 100%; max-width: 48rem; margin: 1rem 0; border-collapse: collapse; font-size: 0.875rem; line-height: 1.35; font-variant-numeric: tabular-nums; }
        caption { padding-bottom: 0.4rem; text-align: left; font-weight: bold; font-size: 0.9375rem; }
        th, td { padding: 0.35rem 0 0.35rem 0.6rem; border-bottom: 1px solid {{Hex(ChartStyle.Grid)}}; text-align: right; vertical-align: top; white-space: nowrap; }
        th:first-child { padding-left: 0; font-weight: normal; }
        th:first-child, .words { white-space: normal; text-align: left; min-width: 5rem; overflow-wrap: anywhere; }
        th.whole { white-space: nowrap; }
        thead th, thead th:first-child { border-bottom: 2px solid {{Hex(ChartStyle.Faint)}}; font-weight: bold; vertical-align: bottom; }
        small { display: block; font-size: 0.75rem; color: {{Hex(ChartStyle.Faint)}}; }
        @media (min-width: 46rem) {
          body { padding: 2rem; }
          dl { grid-template-columns: 1fr 1fr 1fr; }
          .figures { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
          .decision { padding: 1.25rem 1.5rem; }
        }
        @media print {
          @page { margin: 14mm; }
          html { font-size: 10pt; }
          body { max-width: none; padding: 0; }
          h2 { margin-top: 1.5rem; }
          h1, h2, h3, caption, .headline { break-after: avoid; }
          tr, li, figure, dl, .decision { break-inside: avoid; }
          thead { display: table-header-group; }
          dl { grid-template-columns: repeat(3, 1fr); }
          .figures { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
        }

        """.ReplaceLineEndings("\n");

    private const string Tint = "#F1F5F9";

    public static string Hex(OxyColor color) => string.Create(CultureInfo.InvariantCulture, $"#{color.R:X2}{color.G:X2}{color.B:X2}");
}
