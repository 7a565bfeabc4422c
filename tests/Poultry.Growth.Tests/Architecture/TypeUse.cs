namespace Poultry.Growth.Tests.Architecture;

/// <summary>One type used by another.</summary>
/// <param name="User">Full name of the outermost type that uses.</param>
/// <param name="UserNamespace">Its namespace.</param>
/// <param name="Member">Where in it.</param>
/// <param name="Used">Full name of the outermost type that is used.</param>
/// <param name="UsedNamespace">Its namespace.</param>
internal sealed record TypeUse(string User, string UserNamespace, string Member, string Used, string UsedNamespace);
