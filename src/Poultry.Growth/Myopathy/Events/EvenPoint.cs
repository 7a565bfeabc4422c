namespace Poultry.Growth.Myopathy;

/// <summary>One of many points spread evenly over a box of any number of sides, the same on every run: multiples of square roots of primes (Richtmyer 1951).</summary>
internal sealed class EvenPoint(int index)
{
    private int side = 1;

    /// <summary>Its place on the next side, between 0 and 1.</summary>
    public double Next()
    {
        side = NextPrime(side);
        double place = (index + 0.5) * Math.Sqrt(side);
        return place - Math.Floor(place);
    }

    private static int NextPrime(int after)
    {
        for (int number = after + 1; ; number++)
        {
            bool isPrime = true;
            for (int divisor = 2; divisor * divisor <= number; divisor++)
            {
                isPrime &= number % divisor != 0;
            }

            if (isPrime)
            {
                return number;
            }
        }
    }
}
