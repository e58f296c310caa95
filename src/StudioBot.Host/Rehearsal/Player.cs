namespace StudioBot.Host.Rehearsal;

/// <summary>Somebody in a talk.</summary>
/// <param name="Name">As the talk names them.</param>
/// <param name="Account">By which the chat service knows them.</param>
internal sealed record Player(string Name, long Account)
{
    /// <summary>As the studio calls them.</summary>
    public string FirstName => char.ToUpperInvariant(Name[0]) + Name[1..];
}
