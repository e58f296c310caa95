using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.House;

/// <summary><c>me units us</c>: your units, your quiet hours, and what I say by myself.</summary>
internal sealed class MeSet : Act
{
    private const string On = "on";

    private static readonly ChoiceSlot Units = new("units", "units", ["metric", "us", "imperial"])
    {
        Leads = ["units", "unit"],
    };
    private static readonly NewNameSlot Named = new("name", "your name", "name Pia Holm") { Lead = "name" };
    private static readonly QuietSlot Quiet = new();
    private static readonly PingsSlot Mute = new("mute");
    private static readonly PingsSlot Unmute = new("unmute");
    private static readonly ChoiceSlot Wake = new("wake", "on or off", [On, "off"]) { Leads = ["wake"] };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "me", Room.House, "Your units, your quiet hours and what I say by myself.",
        [Named, Units, Quiet, Mute, Unmute, Wake],
        ["me units us", "me name Pia Holm", "me quiet 22-8", "me mute torch", "me unmute torch", "me wake on"])
    {
        More = "Which pings come, and whether a closing window wakes you.",
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => Sheet.Takes.Any(said.Has)
        ? null
        : new Misread("", "what to set is missing", Sheet.Examples[0]);

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        List<string> lines = [];
        var member = writing.Author;
        if (said.Has(Named))
        {
            if (MemberNames.Against(said.Of(Named), writing) is { } taken)
            {
                return taken;
            }

            member = member with { Name = said.Of(Named) };
            writing.Session.Members.Change(member, writing.Act);
            lines.Add($"You are called {member.Name} from now on.");
        }

        if (said.Has(Units))
        {
            var units = UnitsWord.Read(said.Of(Units));
            writing.Session.Members.Change(member with { Units = units }, writing.Act);
            lines.Add($"Your units: {UnitsWord.Of(units)}.");
        }

        if (said.Has(Quiet) || said.Has(Mute) || said.Has(Unmute) || said.Has(Wake))
        {
            var wishes = Wished(said, writing.Session.Wishes.Of(writing.Author.Id), lines);
            writing.Session.Wishes.Change(writing.Author.Id, wishes, writing.Act);
        }

        // When a window is spoken of depends on the night of whose piece it is.
        if (said.Has(Quiet) || said.Has(Wake))
        {
            writing.Touch(writing.Session.Pieces.All()
                .Where(piece => piece.Maker.Equals(writing.Author.Name, StringComparison.OrdinalIgnoreCase))
                .Select(piece => piece.Number));
        }

        return new Reply([new Block.Headline(lines[0]), .. lines.Skip(1).Select(line => new Block.Line(line))]);
    }

    private static Wishes Wished(Phrase said, Wishes before, List<string> lines)
    {
        var wishes = before;
        if (said.Has(Quiet) && QuietSetting.Read(said.Of(Quiet)) is { } hours)
        {
            wishes = wishes with { Quiet = new QuietTimes(hours.From, hours.Until) };
            lines.Add($"Your quiet hours: {QuietSetting.Said(hours)}.");
        }

        if (said.Has(Mute))
        {
            wishes = wishes with { Unwanted = [.. wishes.Unwanted.Union(Kept(said.Of(Mute)))] };
            lines.Add($"Off for you: {Words(said.Of(Mute))}.");
        }

        if (said.Has(Unmute))
        {
            wishes = wishes with { Unwanted = [.. wishes.Unwanted.Except(Kept(said.Of(Unmute)))] };
            lines.Add($"On for you: {Words(said.Of(Unmute))}.");
        }

        if (said.Has(Wake))
        {
            wishes = wishes with { Woken = said.Of(Wake) == On };
            lines.Add(wishes.Woken
                ? "A window that closes at night wakes you."
                : "Nothing wakes you: what closes at night is told before.");
        }

        return wishes;
    }

    private static IEnumerable<string> Kept(IReadOnlyList<PingKind> kinds) => kinds.Select(kind => kind.ToString());

    private static string Words(IReadOnlyList<PingKind> kinds) => string.Join(", ", kinds.Select(PingsSlot.Word));
}
