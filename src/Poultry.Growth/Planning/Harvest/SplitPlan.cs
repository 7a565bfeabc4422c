using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A batch split over two days, as planned.</summary>
internal sealed record SplitPlan(OfferedDate First, OfferedDate Second, Probability Share, FirstBirds Birds);
