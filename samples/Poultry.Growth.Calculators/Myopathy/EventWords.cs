using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Poultry.Growth.Files;
using Poultry.Growth.Myopathy;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Myopathy;

/// <summary>A disturbance in words: <c>age=45d,cycles=10/15/20,share=5%/10%/20%,what=dog</c>; cycles and share together or neither, one value or low/likely/high.</summary>
internal static class EventWords
{
    private const string Expected = "expected age=45d and if wanted cycles=15 with share=10%, what=dog; low/likely/high as in cycles=10/15/20,share=5%/10%/20%";
    private const double MostCycles = 1000;

    /// <summary>Reads one; null, and what is wrong, where it is none.</summary>
    public static Disturbance? Read(string text, out string? problem)
    {
        Dictionary<string, string> parts = [];
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            int sign = part.IndexOf('=', StringComparison.Ordinal);
            string name = sign < 0 ? part : part[..sign].Trim();
            if (sign < 0 || name is not ("age" or "cycles" or "share" or "what") || !parts.TryAdd(name, part[(sign + 1)..].Trim()))
            {
                return Refuse(out problem, "\"" + part + "\" " + (sign < 0 ? "has no equals sign" : parts.ContainsKey(name) ? "stands there twice" : "is not known") + "; " + Expected);
            }
        }

        if (!parts.TryGetValue("age", out string? ageText))
        {
            return Refuse(out problem, "\"" + text + "\" has no age; " + Expected);
        }

        if (!QuantityText.TryAge(ageText, out Age age, out problem))
        {
            return null;
        }

        FlappingDose? dose = null;
        if ((parts.ContainsKey("cycles") || parts.ContainsKey("share")) && !TryDose(parts, out dose, out problem))
        {
            return null;
        }

        problem = null;
        return Disturbance.At(age, parts.TryGetValue("what", out string? what) && what.Length > 0 ? what : "disturbance", dose);
    }

    private static bool TryDose(Dictionary<string, string> parts, out FlappingDose? dose, [NotNullWhen(false)] out string? problem)
    {
        dose = null;
        if (!parts.TryGetValue("cycles", out string? cycles) || !parts.TryGetValue("share", out string? share))
        {
            problem = "cycles and share stand together or not at all; " + Expected;
            return false;
        }

        if (!TryThree(cycles, TryCycles, out double[] numbers, out problem) || !TryThree(share, QuantityText.TryPercent, out double[] shares, out problem))
        {
            return false;
        }

        if (shares[2] > 1)
        {
            problem = "\"" + share + "\" is out of range; expected at most 100%";
            return false;
        }

        Probability Share(int at) => Probability.FromFraction(shares[at]);
        dose = FlappingDose.Between(Share(0), Share(1), Share(2), numbers[0], numbers[1], numbers[2]);
        return true;
    }

    /// <summary>One value, or three in order.</summary>
    private static bool TryThree(string text, Try read, out double[] values, [NotNullWhen(false)] out string? problem)
    {
        string[] parts = text.Split('/', StringSplitOptions.TrimEntries);
        values = new double[3];
        if (parts.Length is not (1 or 3))
        {
            problem = "\"" + text + "\" is neither one value nor low/likely/high; " + Expected;
            return false;
        }

        for (int i = 0; i < 3; i++)
        {
            if (!read(parts[parts.Length == 1 ? 0 : i], out values[i], out problem))
            {
                return false;
            }
        }

        problem = values[0] <= values[1] && values[1] <= values[2] ? null : "\"" + text + "\" is not in order; expected low/likely/high";
        return problem is null;
    }

    private static bool TryCycles(ReadOnlySpan<char> text, out double cycles, [NotNullWhen(false)] out string? problem)
    {
        bool isNumber = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out cycles) && cycles <= MostCycles;
        problem = isNumber ? null : "\"" + text.ToString() + "\" is no number of cycles; expected a number from 0 to 1000";
        return isNumber;
    }

    private static Disturbance? Refuse(out string? problem, string why)
    {
        problem = why;
        return null;
    }

    private delegate bool Try(ReadOnlySpan<char> text, out double value, [NotNullWhen(false)] out string? problem);
}
