using Poultry.Growth.Planning;
using UnitsNet;

namespace Poultry.Growth.Files;

/// <summary>How a season raises the batch of a file.</summary>
/// <param name="Placed">The day its chicks come.</param>
/// <param name="IsTheFilesOwn">Whether it is the batch of the file itself: then its weigh-ins, deaths and feed count. Those of another batch say nothing about this one.</param>
/// <param name="Dates">The days of killing that are considered.</param>
/// <param name="Outside">The mean temperature outdoors at that time; null as in the file.</param>
internal sealed record BatchStart(DateOnly Placed, bool IsTheFilesOwn, IReadOnlyList<OfferedDate> Dates, Temperature? Outside);
