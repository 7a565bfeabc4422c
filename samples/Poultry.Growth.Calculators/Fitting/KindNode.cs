using Poultry.Growth.Files;
using Poultry.Growth.Fitting;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>A kind of batch, and how many the folder holds.</summary>
internal sealed record KindNode(string? Strain, string? System, string Sex, int Batches)
{
    public static KindNode Of(BatchKind kind, BatchHistoryReading reading) => new(kind.Strain, kind.System, Codes.Of(kind.Sex), reading.History!.OfKind(kind).Count);
}
