namespace Poultry.Growth.Weighing;

/// <summary>How the birds of a weigh-in were put on the scale.</summary>
public enum WeighInKind
{
    /// <summary>One bird at a time, each weight written down.</summary>
    Birds,

    /// <summary>A mean that somebody worked out, with the number of birds behind it and, if known, their standard deviation.</summary>
    Mean,

    /// <summary>Several birds on one scale: their weight together and their number. The spread between them is unknown.</summary>
    Group,
}
