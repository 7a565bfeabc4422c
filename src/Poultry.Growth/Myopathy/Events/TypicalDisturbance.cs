namespace Poultry.Growth.Myopathy;

/// <summary>A kind of disturbance that makes birds flap, with what to mind. It has no dose: none was ever measured.</summary>
public sealed class TypicalDisturbance
{
    private TypicalDisturbance(string code, string name, string mind) => (Code, Name, Mind) = (code, name, mind);

    /// <summary>The kinds worth a line in the log. Common practice and opinion; no source gives a dose for any of them.</summary>
    public static IReadOnlyList<TypicalDisturbance> All { get; } =
    [
        new("moving-shelter", "moving the shelter", "Walk the birds, never lift or drive them by the wall; birds that sit on the frame or are caught under it flap."),
        new("weighing", "catching birds to weigh or sort", "Hold both legs or the body and support the breast: birds held by one leg flap more. Catch in dim light."),
        new("thinning", "catching and taking part of the flock", "Whoever stays behind is frightened too: lesions were seen 3 to 10 d after. Part the flock with a screen first."),
        new("predator", "a predator, dog or bird of prey at the shelter", "A bird that is hurt needs a vet or a humane end today. Note the hour, and how many birds piled or flew up."),
        new("weather", "storm, hail, thunder, a flapping sheet", "Piling smothers birds: look at once, count, and note it."),
        new("noise", "machines, fireworks, low aircraft", "A short fright suffices; long noise does not mean more flapping."),
        new("strangers", "visitors, children, new hands", "Human disturbance late in growth was linked with lesions, and aware staff lowered it (second hand, no figure)."),
        new("inverted", "hanging or carrying birds head down", "It makes them flap, and is a matter of welfare and in places of law."),
        new("lame", "lame birds that walk on their wings", "Cull or treat them with your vet: a lame bird suffers whatever its tender looks like."),
    ];

    /// <summary>Stable, for programs.</summary>
    public string Code { get; }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>What to mind.</summary>
    public string Mind { get; }

    /// <summary>What it is, and what to mind.</summary>
    public override string ToString() => Name + ": " + Mind;
}
