using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>What is due is judged and said: one look at the table, in the session that settles it.</summary>
public static class PingRound
{
    internal const string Sent = "sent";
    internal const string SentLate = "sent late";
    internal const string Digested = "in a digest";

    private const int MostAtOnce = 1000;
    private const int MostButtons = 6;
    private const int MostLines = 3;

    // Somebody who can't be written to yet is tried again: they may come with an account.
    private static readonly TimeSpan TriedAgain = TimeSpan.FromHours(1);

    private static readonly Lazy<Catalogue> Forms = new(Catalogue.Find);

    /// <summary>The messages for all that is due now; every row is settled, held or moved on with that.</summary>
    /// <param name="session">Where the table is.</param>
    /// <param name="studio">The studio, over the same session.</param>
    /// <param name="now">The moment.</param>
    /// <param name="isTerminal">Whether who sits at the terminal hears it.</param>
    public static IReadOnlyList<SpokenPing> Of(
        StudioSession session, Studio studio, DateTimeOffset now, bool isTerminal = false)
    {
        var turn = new PingTurn(studio, now);
        WeekPlan.Keep(session, turn);
        var due = session.Reminders.Due(now, MostAtOnce);
        if (due.Count == 0)
        {
            return [];
        }

        List<OutgoingPing> outgoing = [.. due.SelectMany(row => row.What.Civil is not null
            ? Week(row, session, turn, isTerminal)
            : Judged(row, session, turn, isTerminal) is { } ping ? [ping] : [])];
        return [.. Gathering.Of(NewestOf(outgoing.Where(HasSomethingLeft))).Select(message => Spoken(message, turn))];
    }

    // Of minutes that went by there is nothing left to do, and so nothing to say.
    private static bool HasSomethingLeft(OutgoingPing ping) =>
        ping.Verdict is not PingVerdict.TooLate { Now: WhatHolds.Passed };

    // Of what comes late about one thing only the newest holds: cured, it needs no word of its window.
    private static IEnumerable<OutgoingPing> NewestOf(IEnumerable<OutgoingPing> pings) =>
        pings.GroupBy(ping => (ping.IsTooLate, ping.Planned.Chat, ping.Planned.Subject)).SelectMany(about =>
        {
            var kinds = about.Select(ping => ping.Planned.Kind).ToHashSet();
            return about.Key.IsTooLate ? about.Where(ping => !IsOvertaken(ping.Planned.Kind, kinds)) : about;
        });

    private static bool IsOvertaken(PingKind kind, HashSet<PingKind> kinds) => kind switch
    {
        PingKind.Cured => false,
        PingKind.Weigh => kinds.Contains(PingKind.Ready),
        PingKind.WindowOpens => kinds.Contains(PingKind.WindowCloses) || kinds.Contains(PingKind.WindowTonight)
            || kinds.Contains(PingKind.Cured),
        PingKind.WindowTonight => kinds.Contains(PingKind.WindowCloses) || kinds.Contains(PingKind.Cured),
        _ => kinds.Contains(PingKind.Cured),
    };

    // Many places make one line: a phone shows twelve.
    private static List<PingLine> Few(List<PingLine> lines) =>
        lines.Count <= MostLines || lines[0].Kind is PingKind.AskedFor or PingKind.DueDanger
        ? lines
        : [.. lines.GroupBy(line => line.Pings[0].Verdict.GetType()).Select(alike => new PingLine(
            lines[0].Kind,
            "",
            $"{alike.Select(line => line.Place).Distinct().Count()} places",
            [.. alike.SelectMany(line => line.Pings)]))];

    // What goes out of this row now; none where it waits, moved or has nothing to say any more.
    private static OutgoingPing? Judged(Reminder row, StudioSession session, PingTurn turn, bool isTerminal)
    {
        var kind = Enum.Parse<PingKind>(row.What.Kind);
        var subject = PingSubjects.Read(row.What.Subject);
        var ping = PingCatalogue.Of(kind);
        var chat = ChatOf(row, session, turn, isTerminal);
        if (ping is null)
        {
            session.Reminders.Done(row.Id, "nothing says it", turn.Now);
            return null;
        }

        var occurrence = row.What.OccurrenceKey.Split('/')[^1];
        var planned = new PlannedPing(new OccurrenceKey(kind, subject, occurrence), chat ?? 0, row.What.PlannedAt);
        var state = Kept(ping.StateOf(planned, turn));
        if (chat is null)
        {
            Unheard(row, planned, ping, state, session, turn);
            return null;
        }

        var verdict = PingVerdict.Of(planned, turn.Now, state, WishesFor(row, planned, ping, turn));
        var isSaid = Settled(row, verdict, session, turn.Now);
        if (isSaid || verdict is PingVerdict.Unwanted { Why: WhyUnwanted.Muted } && state is SubjectState.Standing)
        {
            ping.Come(planned, session, turn);
        }

        return isSaid
            ? new OutgoingPing(planned, verdict, ping.SessionOf(planned, turn), ping.PlaceOf(planned, turn))
            : null;
    }

    // Nobody to tell: who has no account yet is tried again, who has left is not; what it brings with it comes.
    private static void Unheard(
        Reminder row, PlannedPing planned, Ping ping, SubjectState state, StudioSession session, PingTurn turn)
    {
        if (row.What.MemberId is { } member && turn.Member(member) is not null)
        {
            session.Reminders.Hold(row.Id, turn.Now + TriedAgain, "no account");
            return;
        }

        session.Reminders.Done(row.Id, "nobody to tell", turn.Now);
        if (state is SubjectState.Standing standing && standing.Due <= turn.Now)
        {
            ping.Come(planned, session, turn);
        }
    }

    // What follows the wall clock: the studio's week, one row for all who hear it. The next is planned with it.
    private static IReadOnlyList<OutgoingPing> Week(
        Reminder row, StudioSession session, PingTurn turn, bool isTerminal)
    {
        var planned = WeekPlan.Read(row);
        var wishes = new PingWishes(turn.QuietOf(null));
        var verdict = PingVerdict.Of(planned, turn.Now, new SubjectState.Standing(planned.At), wishes) switch
        {
            PingVerdict.TooLate => new PingVerdict.SendLate(turn.Now - planned.At),
            var other => other,
        };
        if (verdict is PingVerdict.Superseded { By: var later })
        {
            session.Reminders.Done(row.Id, "superseded", turn.Now);
            return WeekPlan.Plan(session, later) && WeekPlan.Waiting(session) is { } inItsPlace
                ? Week(inItsPlace, session, turn, isTerminal)
                : [];
        }

        var hearers = WeekHearers.Of(session, turn);
        List<long> chats = [.. hearers.Group is { } group ? [group] : hearers.Stewards
            .Select(member => ChatOf(member.Id, session, turn, isTerminal)).OfType<long>()];
        if (hearers.Nobody)
        {
            verdict = new PingVerdict.Unwanted(WhyUnwanted.Muted);
        }
        else if (WeekPing.IsIdle(planned, turn))
        {
            verdict = new PingVerdict.Unwanted(WhyUnwanted.Settled);
        }
        else if (chats.Count == 0)
        {
            verdict = new PingVerdict.Hold(turn.Now + TriedAgain);
        }

        var isSaid = Settled(row, verdict, session, turn.Now);
        if (isSaid || verdict is PingVerdict.Unwanted)
        {
            WeekPlan.Plan(session, planned.Following!);
        }

        return isSaid ? [.. chats.Select(chat => new OutgoingPing(planned with { Chat = chat }, verdict, "", ""))] : [];
    }

    // To the millisecond, as the table keeps it: else a moment would lie a hair behind itself for ever.
    private static SubjectState Kept(SubjectState state) => state switch
    {
        SubjectState.Standing standing => new SubjectState.Standing(Kept(standing.Due)),
        SubjectState.Window window => window with { Due = Kept(window.Due) },
        _ => state,
    };

    private static DateTimeOffset Kept(DateTimeOffset moment) =>
        DateTimeOffset.FromUnixTimeMilliseconds(moment.ToUnixTimeMilliseconds());

    // Whether it goes out now.
    private static bool Settled(Reminder row, PingVerdict verdict, StudioSession session, DateTimeOffset now)
    {
        var reminders = session.Reminders;
        switch (verdict)
        {
            case PingVerdict.Send:
                reminders.Done(row.Id, Sent, now);
                return true;
            case PingVerdict.SendLate:
                reminders.Done(row.Id, SentLate, now);
                return true;
            case PingVerdict.TooLate:
                reminders.Done(row.Id, Digested, now);
                return true;
            case PingVerdict.Hold hold:
                reminders.Hold(row.Id, hold.Until, "held");
                return false;
            case PingVerdict.Replan moved:
                reminders.Replan(row.Id, moved.At);
                return false;
            case PingVerdict.Unwanted unwanted:
                reminders.Done(row.Id, unwanted.Why.ToString(), now);
                return false;
            default:
                throw new InvalidOperationException($"A verdict without a road: {verdict}.");
        }
    }

    // A member hears it in their own chat, which has the number of their account; at the terminal where they have none.
    private static long? ChatOf(Reminder row, StudioSession session, PingTurn turn, bool isTerminal)
    {
        if (row.What.ChatId is { } chat)
        {
            return chat;
        }

        return row.What.MemberId is { } id ? ChatOf(id, session, turn, isTerminal) : null;
    }

    private static long? ChatOf(long id, StudioSession session, PingTurn turn, bool isTerminal)
    {
        if (turn.Member(id) is null)
        {
            return null;
        }

        var accounts = session.Members.Accounts(id);
        return accounts.Where(one => isTerminal || one != MemberRecords.Terminal)
            .OrderBy(one => one == MemberRecords.Terminal)
            .Select(one => (long?)one)
            .FirstOrDefault();
    }

    private static PingWishes WishesFor(Reminder row, PlannedPing planned, Ping ping, PingTurn turn)
    {
        var wishes = row.What.MemberId is { } id ? turn.Studio.View.Wishes.Of(id) : new Wishes();
        var snoozed = turn.Studio.View.Wishes.SnoozedUntil(row.What.Kind, row.What.Subject, turn.Now);
        var barred = ping.NotBefore(planned, turn);
        return new PingWishes(turn.QuietOf(row.What.MemberId))
        {
            Muted = wishes.Unwanted.Select(name => Enum.TryParse<PingKind>(name, out var kind) ? kind : (PingKind?)null)
                .OfType<PingKind>().ToHashSet(),
            WakeForWindow = wishes.Woken,
            NotBefore = snoozed is { } one && barred is { } other ? (one > other ? one : other) : snoozed ?? barred,
        };
    }

    private static SpokenPing Spoken(PingMessage message, PingTurn turn)
    {
        List<Block> blocks = [];
        List<Button> buttons = [];
        ReplyFile? file = null;
        if (message.IsDigest)
        {
            blocks.Add(new Block.Headline("This comes late. What holds now:"));
        }

        foreach (var kind in message.Lines.GroupBy(line => line.Kind))
        {
            var ping = PingCatalogue.Of(kind.Key)!;
            var lines = Few([.. kind]);
            blocks.AddRange(lines.Select(line => Line(ping, line, turn, isFirst: blocks.Count == 0)));
            if (!message.IsDigest)
            {
                blocks.AddRange(ping.Under(lines, turn));
                file ??= ping.FileOf(lines, turn);
            }

            buttons.AddRange(ping.Buttons(lines, turn));
        }

        return new SpokenPing(
            message.Chat,
            message.Chat > 0 ? message.Chat : null,
            new Reply(blocks, [.. buttons.DistinctBy(button => button.Line).Take(MostButtons).Select(button =>
                button with { Records = Forms.Value.MayRecord(button.Line) })])
            {
                File = file,
            },
            message.IsDigest);
    }

    private static Block Line(Ping ping, PingLine line, PingTurn turn, bool isFirst)
    {
        var words = line.Pings[0].Verdict switch
        {
            PingVerdict.SendLate late => $"{ping.Say(line, turn)} ({Show.Time(late.By)} late)",
            PingVerdict.TooLate late => ping.SayLate(line, late.Now, turn),
            _ => ping.Say(line, turn),
        };
        return isFirst ? new Block.Headline(words) : new Block.Line(words);
    }
}
