namespace StudioBot.Chat.Replies;

/// <summary>One part of a reply, from top to bottom; what it looks like is the wire's to say.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>The answer itself, first and strongest: one short line.</summary>
    public sealed record Headline(string Text) : Block;

    /// <summary>A line of words, wrapped by the phone.</summary>
    public sealed record Line(string Text) : Block;

    /// <summary>Names and figures under each other, fixed-width where the wire can; a row fits 34 characters.</summary>
    public sealed record Figures(IReadOnlyList<Figure> Rows) : Block;

    /// <summary>A message that one can copy and send.</summary>
    public sealed record Sample(string Text) : Block;

    /// <summary>What to mind: short, and about what was asked.</summary>
    public sealed record Caution(string Text) : Block;
}
