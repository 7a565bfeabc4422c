namespace Poultry.Growth.Files;

/// <summary>A cell of a table, trimmed unless quoted, empty where it holds nothing but spaces, and where it starts: line and character, counted from 1.</summary>
internal readonly record struct CsvCell(string Text, int Line, int Column);

/// <summary>A line of a table (more than one where a quoted cell holds line breaks).</summary>
internal sealed record CsvRow(int Line, IReadOnlyList<CsvCell> Cells);

/// <summary>Text cut into cells after RFC 4180, with comma, semicolon or tab between them, blank lines and # comments between rows.</summary>
internal sealed class Csv
{
    private readonly string text;
    private readonly ProblemList problems;
    private readonly List<CsvRow> rows = [];
    private readonly List<CsvCell> comments = [];
    private char delimiter;
    private int at, line = 1, lineStart;

    private Csv(string text, ProblemList problems) => (this.text, this.problems) = (text, problems);

    /// <summary>Rows that hold something, the header first.</summary>
    public IReadOnlyList<CsvRow> Rows => rows;

    /// <summary>Comments that state something, as in <c># placed: 2027-04-12</c>.</summary>
    public IEnumerable<NamedComment> Statements => NamedComment.Among(comments);

    private bool AtEnd => at >= text.Length;

    private bool AtLineEnd => AtEnd || text[at] is '\n' or '\r';

    private int Column => at - lineStart + 1;

    /// <summary>Cuts a text up; what cannot be cut is a problem.</summary>
    public static Csv Of(string text, ProblemList problems)
    {
        Csv csv = new(text, problems);
        while (!csv.AtEnd)
        {
            csv.ReadLine();
        }

        return csv;
    }

    private void ReadLine()
    {
        SkipSpaces();
        if (!AtEnd && text[at] == '#')
        {
            int column = Column, start = at + 1;
            SkipToLineEnd();
            comments.Add(new(text[start..at], line, column));
        }
        else
        {
            // A delimiter may be white space itself (a tab before an empty cell): the row starts where the line does.
            at = lineStart;
            if (delimiter == 0 && !IsBlankLine())
            {
                delimiter = Delimiter();
            }

            int first = line;
            List<CsvCell> cells = ReadCells();
            if (cells.Exists(cell => cell.Text.Length > 0))
            {
                rows.Add(new CsvRow(first, cells));
            }
        }

        SkipLineEnd();
    }

    private List<CsvCell> ReadCells()
    {
        List<CsvCell> cells = [ReadCell()];
        while (!AtEnd && text[at] == delimiter && delimiter != 0)
        {
            at++;
            cells.Add(ReadCell());
        }

        return cells;
    }

    private CsvCell ReadCell()
    {
        SkipSpaces();
        if (!AtEnd && text[at] == '"')
        {
            return ReadQuoted();
        }

        int start = at, column = Column;
        while (!AtLineEnd && text[at] != delimiter)
        {
            at++;
        }

        return new(text[start..at].Trim(), line, column);
    }

    private CsvCell ReadQuoted()
    {
        (int startLine, int column) = (line, Column);
        System.Text.StringBuilder cell = new();
        for (at++; !AtEnd; at++)
        {
            if (text[at] == '"')
            {
                if (at + 1 >= text.Length || text[at + 1] != '"')
                {
                    at++;
                    RefuseTextAfterQuote(startLine, column, cell.ToString());
                    return new(string.IsNullOrWhiteSpace(cell.ToString()) ? "" : cell.ToString(), startLine, column);
                }

                at++;
            }

            cell.Append(text[at]);
            CountLine();
        }

        problems.Add(startLine, column, "cell", cell.ToString(), "starts with a quote that never ends", "a closing quote");
        return new(cell.ToString(), startLine, column);
    }

    private void RefuseTextAfterQuote(int startLine, int column, string cell)
    {
        SkipSpaces();
        if (!AtLineEnd && text[at] != delimiter)
        {
            problems.Add(startLine, column, "cell", cell, "goes on after its closing quote", "a quote within a quoted cell to be doubled");
            while (!AtLineEnd && text[at] != delimiter)
            {
                at++;
            }
        }
    }

    /// <summary>What stands most often in the first line outside quotes; of equals tab, then semicolon, since commas also stand in numbers.</summary>
    private char Delimiter()
    {
        int tabs = 0, semicolons = 0, commas = 0;
        bool quoted = false;
        for (int i = at; i < text.Length && (quoted || text[i] is not ('\n' or '\r')); i++)
        {
            quoted ^= text[i] == '"';
            tabs += !quoted && text[i] == '\t' ? 1 : 0;
            semicolons += !quoted && text[i] == ';' ? 1 : 0;
            commas += !quoted && text[i] == ',' ? 1 : 0;
        }

        return tabs > 0 && tabs >= semicolons && tabs >= commas ? '\t' : semicolons > 0 && semicolons >= commas ? ';' : ',';
    }

    private bool IsBlankLine()
    {
        int end = text.AsSpan(at).IndexOfAny('\n', '\r');
        return text.AsSpan(at, end < 0 ? text.Length - at : end).IsWhiteSpace();
    }

    private void SkipSpaces()
    {
        while (!AtLineEnd && text[at] != delimiter && char.IsWhiteSpace(text[at]))
        {
            at++;
        }
    }

    private void SkipToLineEnd()
    {
        while (!AtLineEnd)
        {
            at++;
        }
    }

    private void SkipLineEnd()
    {
        if (!AtEnd)
        {
            at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            (line, lineStart) = (line + 1, at);
        }
    }

    /// <summary>Within a quoted cell: a line ends at \n, or at an \r that no \n follows.</summary>
    private void CountLine()
    {
        if (text[at] == '\n' || (text[at] == '\r' && (at + 1 >= text.Length || text[at + 1] != '\n')))
        {
            (line, lineStart) = (line + 1, at + 1);
        }
    }
}
