using System.Globalization;

namespace Poultry.Growth.Primitives;

/// <summary>An amount of money in the farm's own currency, which the library does not need to know: amounts of one calculation are of one currency.</summary>
/// <remarks>Range: any finite number; a loss is negative. The default value is nothing, 0.</remarks>
public readonly struct Money : IEquatable<Money>, IComparable<Money>
{
    private Money(double amount) => Amount = amount;

    /// <summary>No money.</summary>
    public static Money Zero => default;

    /// <summary>The amount in the farm's currency.</summary>
    public double Amount { get; }

    /// <summary>An amount.</summary>
    /// <param name="amount">In the farm's currency; any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">Infinite or not a number.</exception>
    public static Money Of(double amount) => new(Require.Finite(amount, ""));

    /// <summary>The sum.</summary>
    /// <param name="left">Any amount.</param>
    /// <param name="right">Any amount.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sum is beyond all numbers.</exception>
    public static Money Add(Money left, Money right) => Of(left.Amount + right.Amount);

    /// <summary>The difference.</summary>
    /// <param name="left">Any amount.</param>
    /// <param name="right">What is taken off it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The difference is beyond all numbers.</exception>
    public static Money Subtract(Money left, Money right) => Of(left.Amount - right.Amount);

    /// <summary>So many times the amount.</summary>
    /// <param name="money">Any amount.</param>
    /// <param name="fraction">How many times, a pure number, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor, or the product, is not finite.</exception>
    public static Money Multiply(Money money, double fraction) => Of(money.Amount * fraction);

    /// <summary>A gain as a loss and the reverse.</summary>
    /// <param name="money">Any amount.</param>
    public static Money Negate(Money money) => Of(-money.Amount);

    /// <inheritdoc cref="Add"/>
    public static Money operator +(Money left, Money right) => Add(left, right);

    /// <inheritdoc cref="Subtract"/>
    public static Money operator -(Money left, Money right) => Subtract(left, right);

    /// <inheritdoc cref="Multiply"/>
    public static Money operator *(Money money, double fraction) => Multiply(money, fraction);

    /// <inheritdoc cref="Negate"/>
    public static Money operator -(Money money) => Negate(money);

    /// <inheritdoc/>
    public int CompareTo(Money other) => Amount.CompareTo(other.Amount);

    /// <inheritdoc/>
    public bool Equals(Money other) => Amount.Equals(other.Amount);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Money other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Amount.GetHashCode();

    /// <summary>As much.</summary>
    public static bool operator ==(Money left, Money right) => left.Equals(right);

    /// <summary>Not as much.</summary>
    public static bool operator !=(Money left, Money right) => !left.Equals(right);

    /// <summary>Less.</summary>
    public static bool operator <(Money left, Money right) => left.Amount < right.Amount;

    /// <summary>Less or as much.</summary>
    public static bool operator <=(Money left, Money right) => left.Amount <= right.Amount;

    /// <summary>More.</summary>
    public static bool operator >(Money left, Money right) => left.Amount > right.Amount;

    /// <summary>More or as much.</summary>
    public static bool operator >=(Money left, Money right) => left.Amount >= right.Amount;

    /// <summary>With two decimals, as in <c>1234.50</c>, in every culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.00}");
}
