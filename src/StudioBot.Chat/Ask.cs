using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>A question: it gets a view of the records and cannot write.</summary>
public abstract class Ask : Command
{
    /// <inheritdoc/>
    public sealed override bool Records => false;

    /// <summary>The answer.</summary>
    /// <param name="said">What was understood; every slot without a default is filled.</param>
    /// <param name="turn">Who asks, where and when.</param>
    /// <param name="studio">The records and the trade's values.</param>
    internal abstract Reply Answer(Phrase said, Turn turn, Studio studio);
}
