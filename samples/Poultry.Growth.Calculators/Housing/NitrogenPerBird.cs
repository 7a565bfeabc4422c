using Poultry.Growth.Housing;
using UnitsNet;

namespace Poultry.Growth.Calculators.Housing;

/// <summary>Nitrogen of one bird: left on pasture, by a balance or as given; or a legal figure for spreading, which is no load on pasture.</summary>
internal sealed record NitrogenPerBird(Mass Amount, NitrogenBalance? Balance, bool IsSpreadable);
