namespace Poultry.Growth.Calculators.Fitting;

/// <summary>Whose standard it is: a file's, or with its id one that comes with the library.</summary>
internal sealed record StandardNode(string? File, string? Id, string Name, int? Year)
{
    public static StandardNode Of(ComparedStandard standard) => new(standard.File, standard.Shipped?.Id, standard.Name, standard.Year);
}
