using System.Globalization;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.House;

/// <summary><c>remind me fri 18:00 check 17</c>: a reminder.</summary>
internal sealed class RemindCommand : Act
{
    // The longest words that a reply repeats whole; the reminder itself says all of them.
    private const int Shown = 120;

    // Of a day without an hour: people are there by then.
    private static readonly TimeOnly UsualHour = new(9, 0);

    private static readonly DurationSlot In = new();
    private static readonly WhenSlot When = new(isPast: false, "when");
    private static readonly PersonSlot To = new("to") { MayBeMe = true };
    private static readonly PiecesSlot Piece = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "remind", Room.House, "A reminder.",
        [In, When, To, Piece],
        ["remind me fri 18:00 check 17", "remind me in 2h torch", "remind Pia 18:00 sweep"])
    {
        More = "At that moment, or in the morning where that is in quiet hours.",
        Also = ["reminder"],
        RemarksFreely = true,
    };

    /// <inheritdoc/>
    internal override PersonSlot OfWhom => To;

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => (said.Has(In), said.Has(When)) switch
    {
        (false, false) => new Misread("", "the time is missing", Sheet.Examples[0]),
        (true, true) => new Misread("", "there are two times: in how long, or when", Sheet.Examples[0]),
        _ => null,
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said)
    {
        if (said.Has(In))
        {
            var when = said.Context.Local + said.Of(In);
            yield return new("when", when.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture));
        }

        if (said.Remark.Length > 0)
        {
            yield return new("text", said.Remark);
        }
    }

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var at = MomentOf(said, writing);
        if (at <= writing.Now)
        {
            return new Reply(
                new Block.Headline($"{Moment(at, writing)} is over. Nothing recorded."),
                new Block.Line("Try"),
                new Block.Sample(Sheet.Examples[0]))
            {
                IsTrouble = true,
            };
        }

        if (!said.Has(To) && Gone(said, writing) is { } gone)
        {
            return new Reply(new Block.Headline($"{gone} belongs to the studio no more. Nothing recorded."))
            {
                IsTrouble = true,
            };
        }

        if (writing.Session.Wishes.Of(writing.Whose.Id).Unwanted.Contains(nameof(PingKind.AskedFor)))
        {
            return SwitchedOff(writing);
        }

        var words = WordsOf(said);
        Plan(words, at, writing);
        List<Block> blocks =
        [
            new Block.Headline($"I remind {writing.For?.Name ?? "you"} {Moment(at, writing)}: {Short(words)}."),
        ];
        var quiet = new PingTurn(writing.Studio, writing.Now).QuietOf(writing.Whose.Id);
        if (quiet.StretchAt(at) is { } stretch)
        {
            var hours = QuietSetting.Said((quiet.From, quiet.Until));
            blocks.Add(new Block.Line($"Quiet hours then, {hours}: it comes {Moment(stretch.Until, writing)}."));
        }

        if (writing.Turn.Chat == ChatKind.Group)
        {
            blocks.Add(new Block.Line("It comes in private."));
        }

        return new Reply(blocks);
    }

    private static void Plan(string words, DateTimeOffset at, Writing writing)
    {
        var (act, session) = (writing.Act, writing.Session);
        var subject = new PingSubject(PingSubjectKind.Request, act.Id);
        session.Studio.Set(AskedForPing.NameOf(act.Id), words, act);
        session.Reminders.Plan(
            new NewReminder(
                nameof(PingKind.AskedFor),
                PingSubjects.Kept(subject),
                at,
                OccurrenceKey.Nth(PingKind.AskedFor, subject, 1).ToString())
            {
                MemberId = writing.Whose.Id,
            },
            act);
    }

    // So long from now, whatever the clocks do meanwhile; or when the wall shows it.
    private static DateTimeOffset MomentOf(Phrase said, Writing writing)
    {
        if (said.Has(In))
        {
            return writing.Now + said.Of(In);
        }

        var when = said.Of(When);
        var hour = when.TimeOfDay == TimeSpan.Zero ? UsualHour : TimeOnly.FromDateTime(when);
        return writing.Turn.Zone.InstantOf(DateOnly.FromDateTime(when), hour);
    }

    private static string WordsOf(Phrase said)
    {
        var remark = said.Remark.TrimEnd('.');
        remark = remark.StartsWith("to ", StringComparison.OrdinalIgnoreCase) ? remark[3..] : remark;
        return (remark.Length > 0, said.Has(Piece)) switch
        {
            (true, true) => $"{remark} {Figures.Of(said.Of(Piece)[0])}",
            (false, true) => $"piece {Figures.Of(said.Of(Piece)[0])}",
            (true, false) => remark,
            _ => "the time is up",
        };
    }

    // remind Jonas 12:00 sweep, after Jonas has left: not a reminder to oneself about Jonas.
    private static string? Gone(Phrase said, Writing writing)
    {
        var first = said.Remark.Split(' ')[0];
        return writing.MemberNamed(first) is not null ? null : writing.Session.Members.Names().Values
            .FirstOrDefault(name => name.Equals(first, StringComparison.OrdinalIgnoreCase));
    }

    private static string Short(string words) => Labels.Cut(words, Shown + 1);

    private static string Moment(DateTimeOffset at, Writing writing)
    {
        var local = writing.Turn.Zone.LocalOf(at);
        var day = local.Year == writing.Turn.Local.Year ? "ddd d MMM" : "ddd d MMM yyyy";
        return local.ToString(day + " H:mm", CultureInfo.InvariantCulture);
    }

    private static Reply SwitchedOff(Writing writing) => writing.For is { } other
        ? new Reply(new Block.Headline($"{other.Name} has switched reminders off. Nothing recorded."))
        {
            IsTrouble = true,
        }
        : new Reply(
            [new Block.Headline("You have switched reminders off. Nothing recorded.")],
            [new Button("Switch them on", "me unmute asked")])
        {
            IsTrouble = true,
        };
}
