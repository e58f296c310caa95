using StudioBot.Craft.Units;

namespace StudioBot.Records.Members;

/// <summary>Somebody who belongs to the studio.</summary>
/// <param name="Id">The studio's own number for them.</param>
/// <param name="Name">As the studio calls them; unique, upper and lower case alike.</param>
/// <param name="Role">What they may do.</param>
/// <param name="Units">The units they asked for; none: the studio's.</param>
public sealed record Member(long Id, string Name, Role Role, UnitSystem? Units);
