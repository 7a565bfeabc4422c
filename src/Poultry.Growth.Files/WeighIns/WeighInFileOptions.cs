using Poultry.Growth.Primitives;

namespace Poultry.Growth.Files;

/// <summary>How to read a weigh-in file that does not say everything itself, or whose columns have other names. What is given here wins over the file.</summary>
public sealed class WeighInFileOptions
{
    /// <summary>The day the chicks were placed.</summary>
    /// <value>Null: the file's own <c># placed:</c> line, if any.</value>
    public DateOnly? Placed { get; init; }

    /// <summary>How old they were that day: chicks by mail are one to three days old.</summary>
    /// <value>Null: the file's own <c># age_at_placement_d:</c> line, if any. Never taken for 0.</value>
    public Age? AgeAtPlacement { get; init; }

    /// <summary>The name of the column of ages, in place of <c>age_d</c>, <c>age_wk</c> and <c>date</c>.</summary>
    public string? AgeColumn { get; init; }

    /// <summary>The unit of <see cref="AgeColumn"/>.</summary>
    /// <value>Null: weeks where the name ends in <c>_wk</c>, days otherwise.</value>
    public AgeUnit? AgeUnit { get; init; }

    /// <summary>The name of the column of single birds' weights, in place of every column of weights and numbers of birds.</summary>
    public string? WeightColumn { get; init; }

    /// <summary>The unit of <see cref="WeightColumn"/>.</summary>
    /// <value>Null: the unit in which the name ends, as in <c>_g</c>; a name without unit is a problem.</value>
    public WeightUnit? WeightUnit { get; init; }

    /// <summary>Rows to read, each <c>column=value</c>, as in <c>Chick=1</c>; a row must fit all of them, letter by letter.</summary>
    /// <value>Empty: every row.</value>
    public IReadOnlyList<string> Where { get; init; } = [];

    /// <summary>Whether birds and weigh-ins that look wrong are left out.</summary>
    /// <value>False: they are flagged and kept.</value>
    public bool ExcludeFlagged { get; init; }

    /// <summary>Whether a header without rows is no problem: a batch that was not weighed yet.</summary>
    internal bool MayBeEmpty { get; init; }
}
