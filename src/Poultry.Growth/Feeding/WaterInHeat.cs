namespace Poultry.Growth.Feeding;

/// <summary>How much more birds drink for each degree above 21 °C: sources part, so that one is chosen.</summary>
public enum WaterInHeat
{
    /// <summary>7 % of the amount at 21 °C for each degree: 1.7 times at 31 °C. Between the others.</summary>
    SevenPercentOfBase,

    /// <summary>7 % compounded: 1.97 times at 31 °C. The safe side for drinkers and pumps.</summary>
    SevenPercentCompounded,

    /// <summary>30 to 50 % more at 32 °C, taken as 40 % over 11 degrees: 1.36 times at 31 °C.</summary>
    FortyPercentAt32,
}
