using Poultry.Growth.Numerics;

namespace Poultry.Growth.Planning;

/// <summary>What is uncertain about a batch, as standard numbers: each the same for every day of killing, so that days are compared on equal terms.</summary>
/// <remarks>A function of (seed, draw, which): the same on every thread and in any order. The growth curve draws its own (purposes 1 to 3).</remarks>
internal readonly struct DrawnInputs
{
    private const int FirstPurpose = 11;

    private readonly long seed;
    private readonly long draw;

    public DrawnInputs(long seed, long draw) => (this.seed, this.draw) = (seed, draw);

    /// <summary>Normal: how well the batch survives.</summary>
    public double Survival => Stream(0).NextNormal();

    /// <summary>Even: how many live, given that.</summary>
    public double Head => Stream(1).NextUniform();

    /// <summary>Even, twice: whether a large loss comes, and how large.</summary>
    public (double Comes, double Share) LargeLoss
    {
        get
        {
            RandomStream stream = Stream(2);
            return (stream.NextUniform(), stream.NextUniform());
        }
    }

    /// <summary>Normal: how much more they eat than the model says.</summary>
    public double Feed => Stream(3).NextNormal();

    /// <summary>Even: how they dress.</summary>
    public double Dressing => Stream(4).NextUniform();

    /// <summary>Even: how many of them have dead tenders.</summary>
    public double Lesions => Stream(5).NextUniform();

    /// <summary>Even: what prices do.</summary>
    public double Prices => Stream(6).NextUniform();

    /// <summary>Even, one an offer: what is asked for.</summary>
    public RandomStream Demand => Stream(7);

    /// <summary>Normal: the error of a weigh-in that is thought of.</summary>
    public double WeighIn => Stream(8).NextNormal();

    /// <summary>Even: how many are dead on arrival.</summary>
    public double Road => Stream(9).NextUniform();

    /// <summary>Even: how many are condemned.</summary>
    public double Condemned => Stream(10).NextUniform();

    /// <summary>Even: what cut pieces weigh of what their shares say.</summary>
    public double Cuts => Stream(11).NextUniform();

    private RandomStream Stream(int which) => new(seed, draw, FirstPurpose + which);
}
