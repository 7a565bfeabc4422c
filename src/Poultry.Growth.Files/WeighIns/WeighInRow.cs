using Poultry.Growth.Primitives;
using Poultry.Growth.Weighing;

namespace Poultry.Growth.Files;

/// <summary>A row of a weigh-in file that holds what it should.</summary>
internal sealed record WeighInRow(
    CsvCell Cell, WeighInKind Kind, Age Age, Sex Sex, double Kilograms, int Birds, double? StandardDeviationKilograms, string Note);
