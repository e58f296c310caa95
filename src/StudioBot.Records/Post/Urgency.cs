namespace StudioBot.Records.Post;

/// <summary>Which post goes first where several wait.</summary>
public enum Urgency
{
    /// <summary>Somebody waits for it.</summary>
    Reply = 0,

    /// <summary>What the bot says by itself.</summary>
    Ping = 1,

    /// <summary>A summary, which may come a little later.</summary>
    Digest = 2,
}
