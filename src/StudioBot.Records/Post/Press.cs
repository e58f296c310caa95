namespace StudioBot.Records.Post;

/// <summary>What stands behind a button: a line that its owner may say by pressing, once.</summary>
/// <param name="Key">What the button carries: 16 to 64 characters nobody can guess, drawn by the caller.</param>
/// <param name="OwnerUserId">The account it is for; none: anybody of the studio in that chat.</param>
/// <param name="ChatId">The chat it stands in.</param>
/// <param name="Line">The line it says.</param>
/// <param name="ExpiresAt">From then on it is void.</param>
public sealed record Press(string Key, long? OwnerUserId, long ChatId, string Line, DateTimeOffset ExpiresAt)
{
    /// <summary>It agrees to a record that was doubted.</summary>
    public bool Agrees { get; init; }
}
