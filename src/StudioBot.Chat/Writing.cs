using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat;

/// <summary>One record while it is written: who, when, for whom, and the session it is written in.</summary>
internal sealed class Writing
{
    private readonly Phrase _said;
    private readonly List<Aside> _asides = [];
    private readonly HashSet<int> _touched = [];
    private readonly HashSet<int> _stirred = [];
    private Booked? _act;

    /// <summary>A record that is about to be written.</summary>
    public Writing(Phrase said, Turn turn, Studio studio, StudioSession session, string words)
    {
        (_said, Turn, Studio, Session) = (said, turn, studio, session);
        Words = words.Length > 0 ? words : "(no words)";
        HappenedAt = Moment(said, turn);
    }

    /// <summary>The message.</summary>
    public Turn Turn { get; }

    /// <summary>What of the message tells this record.</summary>
    public string Words { get; }

    /// <summary>The records to look at, with what the trade assumes.</summary>
    public Studio Studio { get; }

    /// <summary>Where it is written.</summary>
    public StudioSession Session { get; }

    /// <summary>What the trade assumes.</summary>
    public TradePractice Practice => Studio.Practice;

    /// <summary>Who writes.</summary>
    /// <exception cref="InvalidOperationException">A stranger does: only a command for strangers may come
    /// here.</exception>
    public Member Author => Turn.Member ?? throw new InvalidOperationException("A record has an author.");

    /// <summary>For whom, where that is somebody else.</summary>
    public Member? For => Turn.Member is { } author
        && (_said.Form as Chat.Act)?.OfWhom is { } slot
        && _said.Has(slot)
        && MemberNamed(_said.Of(slot)) is { } other
        && other.Id != author.Id ? other : null;

    /// <summary>Whose it is: for whom it is written, else who writes it.</summary>
    public Member Whose => For ?? Author;

    /// <summary>When it was typed.</summary>
    public DateTimeOffset Now => Turn.Now;

    /// <summary>The moment it is about: a day that was named, else when it was typed; never to come.</summary>
    public DateTimeOffset HappenedAt { get; }

    /// <summary>What everything booked hangs from; begun with the first that is.</summary>
    public Booked Act => _act ??= Session.Acts.Begin(new NewAct(_said.Form.Sheet.Word, Turn.Member, Words, Now)
    {
        For = For,
        ChatId = Turn.ChatId,
        MessageId = Turn.MessageId,
        HappenedAt = HappenedAt,
    });

    /// <summary>Whether something was booked.</summary>
    public bool HasAct => _act is not null;

    /// <summary>What others are told.</summary>
    public IReadOnlyList<Aside> Asides => _asides;

    /// <summary>Pieces whose estimate, window or promise may have changed: what is said of them is planned
    /// anew.</summary>
    public IReadOnlyCollection<int> Touched => [.. _touched.Union(_stirred)];

    /// <summary>Those of them that the record is about.</summary>
    public IReadOnlyCollection<int> Spoken => _touched;

    /// <summary>A member hears of it, in private.</summary>
    public void Tell(Member member, Reply reply) => _asides.Add(new Aside(member, reply));

    /// <summary>What is said of these pieces by itself is to be planned anew.</summary>
    public void Touch(params IEnumerable<int> pieces) => _touched.UnionWith(pieces);

    /// <summary>So it is of these, which it is not about: others in a room whose air was said too.</summary>
    public void Stir(params IEnumerable<int> pieces) => _stirred.UnionWith(pieces);

    /// <summary>The member of this name; none where nobody here has it.</summary>
    public Member? MemberNamed(string name) => Session.Members.All()
        .FirstOrDefault(member => member.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    // A day without an hour is today's now, or noon of an earlier day.
    private static DateTimeOffset Moment(Phrase said, Turn turn)
    {
        var slot = said.Has(RecordSlots.Seen) ? RecordSlots.Seen : RecordSlots.Day;
        if (!said.Has(slot))
        {
            return turn.Now;
        }

        var day = said.Of(slot);
        if (day.TimeOfDay == TimeSpan.Zero)
        {
            day = day.Date == turn.Local.Date ? turn.Local : day.Date.AddHours(12);
        }

        var moment = turn.Zone.InstantOf(DateOnly.FromDateTime(day), TimeOnly.FromDateTime(day));
        return moment < turn.Now ? moment : turn.Now;
    }
}
