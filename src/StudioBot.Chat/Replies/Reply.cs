namespace StudioBot.Chat.Replies;

/// <summary>What the bot says to one message: blocks from top to bottom, and the buttons under them.</summary>
/// <param name="Blocks">At least one.</param>
/// <param name="Buttons">What could be sent next; at most six.</param>
public sealed record Reply(IReadOnlyList<Block> Blocks, IReadOnlyList<Button> Buttons)
{
    /// <summary>A reply without buttons.</summary>
    public Reply(params IReadOnlyList<Block> blocks)
        : this(blocks, [])
    {
    }

    /// <summary>The message could not be read or done; nothing was recorded.</summary>
    public bool IsTrouble { get; init; }

    /// <summary>Why it was not theirs to ask or to do, for the book of refusals; none where it was.</summary>
    public string? Refused { get; init; }

    /// <summary>What goes out with it; none: words alone.</summary>
    public ReplyFile? File { get; init; }

    /// <summary>A proven copy of the studio follows it as a file. Only who sends it can make one: it is wished here,
    /// and made outside the record that is written.</summary>
    public bool BringsBackup { get; init; }

    /// <summary>
    /// The words alone, one block after the other, for a terminal, a screen reader or a message that won't render.
    /// </summary>
    public string PlainText => string.Join('\n', Blocks.SelectMany(LinesOf));

    private static IEnumerable<string> LinesOf(Block block) => block switch
    {
        Block.Headline headline => [headline.Text],
        Block.Line line => [line.Text],
        Block.Figures figures => FigureTable.Lines(figures.Rows),
        Block.Sample sample => ["  " + sample.Text],
        Block.Caution caution => ["! " + caution.Text],
        _ => [],
    };
}
