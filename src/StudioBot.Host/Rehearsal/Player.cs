namespace StudioBot.Host.Rehearsal;

/// <summary>Somebody in a talk.</summary>
/// <param name="Name">As the talk names them.</param>
/// <param name="Account">By which the chat service knows them.</param>
internal sealed record Player(string Name, long Account)
{
    /// <summary>As the studio calls them; pia_berg is Pia Berg.</summary>
    public string FirstName => string.Join(
        ' ', Name.Split('_').Where(word => word.Length > 0).Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
}
