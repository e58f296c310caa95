namespace StudioBot.Records.Rooms;

/// <summary>A room of the studio, with an air of its own.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="Name">As the studio calls it; unique, upper and lower case alike.</param>
public sealed record Room(long Id, string Name);
