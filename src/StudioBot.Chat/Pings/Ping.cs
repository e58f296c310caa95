using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Pings;

/// <summary>One thing that the bot says by itself: one file, found by <see cref="PingCatalogue"/>.</summary>
internal abstract class Ping
{
    /// <summary>All there is to say about it.</summary>
    public abstract PingSheet Sheet { get; }

    /// <summary>What of it is wanted for this piece, by what is known now; empty where nothing is.</summary>
    internal virtual IEnumerable<Wanted> Wants(int piece, PingTurn turn) => [];

    /// <summary>What of it is wanted for this material by this hearer: a steward, or who mixed a batch of it; empty
    /// where nothing is.</summary>
    internal virtual IEnumerable<Wanted> WantsOf(long material, Member hearer, PingTurn turn) => [];

    /// <summary>What holds now for its subject.</summary>
    internal abstract SubjectState StateOf(PlannedPing planned, PingTurn turn);

    /// <summary>Until when nobody wants to hear it; none where nobody said.</summary>
    internal virtual DateTimeOffset? NotBefore(PlannedPing planned, PingTurn turn) => null;

    /// <summary>The pour or coat it comes from; those of one share a line.</summary>
    internal virtual string SessionOf(PlannedPing planned, PingTurn turn) => "";

    /// <summary>Where its subject lies; those at one place share a line.</summary>
    internal virtual string PlaceOf(PlannedPing planned, PingTurn turn) =>
        PingSubjects.PieceOf(planned.Subject) is { } number ? turn.PlaceOf(number) : "";

    /// <summary>What its moment brings with it, said or switched off: a piece is cured.</summary>
    internal virtual void Come(PlannedPing planned, StudioSession session, PingTurn turn)
    {
    }

    /// <summary>One line of a message.</summary>
    internal abstract string Say(PingLine line, PingTurn turn);

    /// <summary>One line of a digest: what holds now of what missed its hour.</summary>
    internal virtual string SayLate(PingLine line, WhatHolds now, PingTurn turn) => now is WhatHolds.Still still
        ? $"{Say(line, turn)} (since {turn.Moment(still.Since)})"
        : Say(line, turn);

    /// <summary>What is said once under all lines of this kind: how to check by hand, what comes next.</summary>
    internal virtual IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn) => [];

    /// <summary>What goes out with it; none: words alone.</summary>
    internal virtual ReplyFile? FileOf(IReadOnlyList<PingLine> lines, PingTurn turn) => null;

    /// <summary>What could be sent next.</summary>
    internal virtual IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn) => [];
}
