namespace Poultry.Growth.Myopathy;

/// <summary>How a lesion of the tender looks. What is not yet visible has no stage.</summary>
public enum LesionStage
{
    /// <summary>Stage I: swollen, red, bleeding.</summary>
    Red,

    /// <summary>Stage II: pale pink, or as if boiled, in the middle third; perhaps with a bloody rim.</summary>
    Pink,

    /// <summary>Stage III: green.</summary>
    Green,

    /// <summary>Stage IV: grey, white and green, dry, crumbling; later fibrous or fatty.</summary>
    Grey,
}
