using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>A record: it gets a session of the studio, and what it writes stands with its reply or not at
/// all.</summary>
public abstract class Act : Command
{
    /// <inheritdoc/>
    public sealed override bool Records => true;

    /// <summary>Whether it needs no membership: one who joins has none yet.</summary>
    internal virtual bool IsForStrangers => false;

    /// <summary>Whether its reply ends with the ready days of the pieces it touched.</summary>
    internal virtual bool ShowsReadyDays => false;

    /// <summary>Whether the studio may know another word after it: a name, a lot, a number.</summary>
    internal virtual bool MayName => true;

    /// <summary>Whether its reply carries the button that takes it back. A question that leads on has nothing that one
    /// would want back; <c>undo</c> takes it back all the same.</summary>
    internal virtual bool ShowsUndo => true;

    /// <summary>Which of its slots says for whom it is, where that is not who writes it.</summary>
    internal virtual PersonSlot OfWhom => RecordSlots.For;

    /// <summary>
    /// Does it. A reply that is trouble takes back all that was written; any other one says what changed and the level
    /// or stage after it. The button that undoes it is put under the reply by <see cref="Conversation"/>, where
    /// <see cref="ShowsUndo"/>.
    /// </summary>
    internal abstract Reply Do(Phrase said, Writing writing);
}
