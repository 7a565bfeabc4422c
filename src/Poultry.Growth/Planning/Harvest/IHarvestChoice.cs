using Poultry.Growth.Primitives;

namespace Poultry.Growth.Planning;

/// <summary>A way to have a batch killed, made ready for draws: on one day, or on two.</summary>
internal interface IHarvestChoice
{
    /// <summary>How old the last birds are.</summary>
    Age LastAge { get; }

    /// <summary>Works out one draw.</summary>
    /// <param name="fate">What was drawn.</param>
    /// <param name="packs">Room for packs: two numbers an offer, packs and the kilograms in them, then two more, packs sold and left.</param>
    HarvestOutcome Of(BatchFate fate, Span<double> packs);
}
