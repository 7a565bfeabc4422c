using Poultry.Growth.Files;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Whose standard it is.</summary>
internal sealed record StandardNode(string File, string Name, int Year)
{
    public static StandardNode Of(StandardReading standard) => new(standard.File, standard.Name!, standard.Year!.Value);
}
