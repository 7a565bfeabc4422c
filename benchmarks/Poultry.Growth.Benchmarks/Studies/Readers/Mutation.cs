using System.Text;
using Poultry.Growth.Numerics;

namespace Poultry.Growth.Benchmarks.Studies.Readers;

/// <summary>Spoils the bytes of a file as hands, spreadsheets and disks do: a piece lost, put in, replaced or doubled, the end cut off, a byte changed.</summary>
internal static class Mutation
{
    private static readonly byte[][] Pieces =
    [
        .. new[]
        {
            "0", "-1", "1e999", "NaN", "99999999999999999999", "0.000000001", "1,5", "1.234,5", "%", "kg", "lb", "5lb11oz", "-0", "2027-02-30", "9999-12-31", "0001-01-01", "63d",
            "null", "true", "{", "}", "[", "]", ":", ",", ";", "\t", "\"", "\"\"", "\\u0000", "//", "/*", "#", "# name:", "# placed: 2027-04-12", "\n", "\r", "\r\n\r\n", "\0", "\uFEFF", "\u2028", "\u00FC", "\U0001F414",
        }.Select(Encoding.UTF8.GetBytes),
        [0xFF, 0xFE],
        [0xC3],
        [.. Enumerable.Repeat((byte)'[', 3000)],
        [.. Enumerable.Repeat((byte)'9', 3000)],
        [.. Enumerable.Repeat((byte)'\n', 300)],
    ];

    /// <summary>The file with up to four such changes; one file in five stays as it is.</summary>
    /// <param name="file">A file as it should be.</param>
    /// <param name="random">Where the changes come from.</param>
    public static byte[] Of(byte[] file, ref RandomStream random)
    {
        byte[] spoilt = file;
        for (int change = Below(5, ref random); change > 0; change--)
        {
            spoilt = Changed(spoilt, ref random);
        }

        return spoilt;
    }

    /// <summary>A whole number from 0 to one less than <paramref name="count"/>.</summary>
    public static int Below(int count, ref RandomStream random) => (int)(random.NextUniform() * count);

    private static byte[] Changed(byte[] file, ref RandomStream random)
    {
        int at = Below(file.Length + 1, ref random);
        int length = Math.Min(Below(8, ref random), file.Length - at);
        byte[] piece = Pieces[Below(Pieces.Length, ref random)];
        switch (Below(7, ref random))
        {
            case 0:
                return [.. file[..at], .. file[(at + length)..]];
            case 1:
                return [.. file[..at], .. piece, .. file[at..]];
            case 2:
                return [.. file[..at], .. piece, .. file[(at + length)..]];
            case 3:
                int doubled = Math.Min(Below(60, ref random), file.Length - at);
                return [.. file[..(at + doubled)], .. file[at..]];
            case 4:
                return Below(4, ref random) == 0 ? file[..at] : file;
            case 5:
                (int start, int end) = Number(file, at);
                return [.. file[..start], .. piece, .. file[end..]];
            default:
                return at == file.Length ? file : [.. file[..at], (byte)Below(256, ref random), .. file[(at + 1)..]];
        }
    }

    /// <summary>The number that stands at a place or after it; nothing at the end where none does.</summary>
    private static (int Start, int End) Number(byte[] file, int at)
    {
        int start = at;
        while (start < file.Length && !char.IsAsciiDigit((char)file[start]))
        {
            start++;
        }

        int end = start;
        while (end < file.Length && (char.IsAsciiDigit((char)file[end]) || file[end] == '.'))
        {
            end++;
        }

        return (start, end);
    }
}
