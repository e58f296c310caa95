namespace StudioBot.Records.Rooms;

/// <summary>A place for pieces, and so the room whose air they have.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="Label">As written on it: B3; unique, upper and lower case alike.</param>
/// <param name="Room">The name of the room it stands in.</param>
public sealed record Shelf(long Id, string Label, string Room);
