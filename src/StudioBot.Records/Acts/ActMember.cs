namespace StudioBot.Records.Acts;

/// <summary>Somebody whom an act names, whether or not they still belong to the studio.</summary>
/// <param name="Id">The studio's own number for them.</param>
/// <param name="Name">As the studio calls them now.</param>
public sealed record ActMember(long Id, string Name);
