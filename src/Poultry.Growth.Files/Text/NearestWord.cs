namespace Poultry.Growth.Files;

/// <summary>What somebody probably meant who typed a word that is not known.</summary>
internal static class NearestWord
{
    /// <summary>Longer than any word of ours with slips: comparing costs the product of the lengths.</summary>
    private const int Longest = 40;

    /// <summary>As in <c> (did you mean birds?)</c>; empty where no word is near: a wrong guess would lead astray.</summary>
    public static string Hint(string typed, IReadOnlyCollection<string> known)
    {
        if (typed.Length > Longest)
        {
            return "";
        }

        int most = Math.Max(1, typed.Length / 3);
        string? nearest = known.Select(word => (Word: word, Slips: Slips(typed.ToUpperInvariant(), word.ToUpperInvariant())))
            .Where(guess => guess.Slips <= most).OrderBy(guess => guess.Slips).Select(guess => guess.Word).FirstOrDefault()
            ?? known.FirstOrDefault(word => typed.Length > 2 && word.StartsWith(typed, StringComparison.OrdinalIgnoreCase));
        return nearest is null ? "" : " (did you mean " + nearest + "?)";
    }

    /// <summary>Letters too many, missing, wrong, or two swapped, to come from one word to the other.</summary>
    private static int Slips(string one, string other)
    {
        int[][] slips = [.. Enumerable.Range(0, one.Length + 1).Select(_ => new int[other.Length + 1])];
        for (int i = 0; i <= one.Length; i++)
        {
            for (int j = 0; j <= other.Length; j++)
            {
                slips[i][j] = i == 0 || j == 0
                    ? i + j
                    : Math.Min(Math.Min(slips[i - 1][j], slips[i][j - 1]) + 1, slips[i - 1][j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                {
                    slips[i][j] = Math.Min(slips[i][j], slips[i - 2][j - 2] + 1);
                }
            }
        }

        return slips[one.Length][other.Length];
    }
}
