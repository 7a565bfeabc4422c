namespace Poultry.Growth.Myopathy;

/// <summary>What is taken to be as likely as what before the lesions are looked at.</summary>
public enum DatingPrior
{
    /// <summary>Every day from the first age with lesions of that sex (26 d cockerels, 36 d pullets) to half a day before killing alike.</summary>
    Flat,

    /// <summary>Days by how susceptible the birds were, which favours the last ones.</summary>
    Susceptibility,

    /// <summary>Only the days of logged disturbances, each alike.</summary>
    Log,
}
