using Poultry.Growth.Evidence;
using Poultry.Growth.Fitting;
using UnitsNet;

namespace Poultry.Growth.Calculators.Fitting;

/// <summary>What a weigh-in to come will show, and what it would add.</summary>
internal sealed record NextWeighIn(Estimate<Mass> Mean, WeighInWorth Worth);
