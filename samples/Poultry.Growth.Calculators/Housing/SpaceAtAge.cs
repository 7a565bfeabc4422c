using Poultry.Growth.Housing;
using Poultry.Growth.Primitives;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>A floor at one age, and the chance that its limits are passed by then; null where no limit is known to bind.</summary>
internal sealed record SpaceAtAge(DensityAtAge At, Probability? ChanceOver);
