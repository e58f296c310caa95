namespace StudioBot.Chat.Replies;

/// <summary>A button is a message one could have typed.</summary>
/// <param name="Label">What stands on it, at most about 20 characters.</param>
/// <param name="Line">The message it stands for, which the reader accepts.</param>
public sealed record Button(string Label, string Line)
{
    /// <summary>Pressing it agrees to a record that was doubted, as its line alone would not.</summary>
    public bool Agrees { get; init; }

    /// <summary>Whoever belongs to the studio may press it: what it says decides whether it is theirs to do.</summary>
    public bool IsAnybodys { get; init; }

    /// <summary>What comes of pressing it takes the place of the message it stands under.</summary>
    public bool IsInPlace { get; init; }

    /// <summary>It may record, so that it is its owner's and good once.</summary>
    public bool Records { get; init; }
}
