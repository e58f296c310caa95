using StudioBot.Craft.Units;

namespace StudioBot.Records.House;

/// <summary>What a studio has set for itself.</summary>
/// <param name="Name">As it calls itself, 1 to 80 characters.</param>
/// <param name="Zone">The name of its time zone: Europe/Vienna.</param>
/// <param name="Currency">Three letters: EUR.</param>
/// <param name="Units">In which units it answers, unless a member has set others.</param>
/// <param name="Scoop">What its scoop holds; above zero.</param>
public sealed record StudioSettings(string Name, string Zone, string Currency, UnitSystem Units, Volume Scoop);
