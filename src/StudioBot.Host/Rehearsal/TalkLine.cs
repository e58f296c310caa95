namespace StudioBot.Host.Rehearsal;

/// <summary>One line of a talk.</summary>
/// <param name="Number">Where it stands, from 1.</param>
/// <param name="Text">As written.</param>
internal abstract record TalkLine(int Number, string Text)
{
    /// <summary>Which studio: empty, or the invented one.</summary>
    public sealed record Studio(int Number, string Text, bool IsSample) : TalkLine(Number, Text);

    /// <summary>Its time zone.</summary>
    public sealed record Zone(int Number, string Text, string Name) : TalkLine(Number, Text);

    /// <summary>Who belongs to an empty studio.</summary>
    public sealed record Members(int Number, string Text, IReadOnlyList<(string Name, bool IsSteward)> All)
        : TalkLine(Number, Text);

    /// <summary>The clock is set to a moment of studio time.</summary>
    public sealed record At(int Number, string Text, DateTime Local) : TalkLine(Number, Text);

    /// <summary>So much time goes by.</summary>
    public sealed record Later(int Number, string Text, TimeSpan By) : TalkLine(Number, Text);

    /// <summary>Somebody writes, with a photo or in place of their last message.</summary>
    public sealed record Says(
        int Number, string Text, string Who, bool InGroup, string Words, bool HasPhoto, bool Edits)
        : TalkLine(Number, Text);

    /// <summary>Somebody presses the newest button they can see that begins so.</summary>
    public sealed record Presses(int Number, string Text, string Who, bool InGroup, string Label)
        : TalkLine(Number, Text);

    /// <summary>The service goes away.</summary>
    public sealed record Stop(int Number, string Text) : TalkLine(Number, Text);

    /// <summary>The service is back.</summary>
    public sealed record Start(int Number, string Text) : TalkLine(Number, Text);

    /// <summary>The service dies at the next message or ping, at this point of it, and starts again.</summary>
    public sealed record Crash(int Number, string Text, CrashPoint Point) : TalkLine(Number, Text);

    /// <summary>This occurs in what the bot sent since the last line of a person or of the clock.</summary>
    public sealed record Must(int Number, string Text, string Words) : TalkLine(Number, Text);

    /// <summary>This does not occur there; no words: nothing was sent.</summary>
    public sealed record MustNot(int Number, string Text, string Words) : TalkLine(Number, Text);

    /// <summary>Somebody tells what happens, for who watches.</summary>
    public sealed record Told(int Number, string Text) : TalkLine(Number, Text);
}
