using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Calendars;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>calendar</c>: a calendar file.</summary>
internal sealed class CalendarCommand : Ask
{
    private static readonly PersonSlot Whose = new("member") { MayBeMe = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "calendar", Room.Sharing, "A calendar file.",
        [Whose],
        ["calendar", "calendar mine"])
    {
        More = "Ready days, recoat windows, cures, promises, workshops, the week; a later one puts an earlier "
            + "one right.",
        Also = ["cal"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var maker = said.Has(Whose) ? said.Of(Whose) == "me" ? turn.Who.Name : said.Of(Whose) : null;
        var entries = StudioCalendar.Of(maker, turn, studio);
        if (entries.Count == 0)
        {
            return new Reply(new Block.Headline($"Nothing to come of {maker}'s pieces: no calendar"));
        }

        var name = string.Create(CultureInfo.InvariantCulture, $"studio-{turn.Local:yyyy-MM-dd}.ics");
        return new Reply(
        [
            new Block.Headline(maker is null ? "The studio's calendar" : $"The calendar of {maker}'s pieces"),
            new Block.Line($"{Counted(entries)}.{Sentences.Invented(studio)}"),
            new Block.Line("As it is now. Send it again later and open the new file: it puts the old one right."),
        ])
        {
            File = new ReplyFile(name, CalendarFile.MediaType, CalendarFile.Of(entries, StudioId(studio), turn.Now)),
        };
    }

    // What is to come, by what it is.
    private static string Counted(IReadOnlyList<CalendarEntry> entries) => Sentences.Capital(string.Join(", ",
        new[]
        {
            ("ready day", "-ready"), ("recoat window", "-window"), ("cure", "-cured"), ("promise", "-due"),
        }
        .Select(kind => (Kind: kind.Item1, Count: entries.Count(one => !one.IsCancelled && Ends(one, kind.Item2))))
        .Append((Kind: "workshop", Count: entries.Count(one => Begins(one, "workshop"))))
        .Where(kind => kind.Count > 0)
        .Select(kind => $"{kind.Count} {kind.Kind}{(kind.Count == 1 ? "" : "s")}")
        .DefaultIfEmpty("the week")));

    private static bool Ends(CalendarEntry entry, string with) => entry.Id.EndsWith(with, StringComparison.Ordinal);

    private static bool Begins(CalendarEntry entry, string with) => entry.Id.StartsWith(with, StringComparison.Ordinal);

    // A studio has no name of its own in the world: the second of its first act tells it from others.
    private static string StudioId(Studio studio) => string.Create(
        CultureInfo.InvariantCulture, $"studio-{studio.View.Acts.Find(1)?.WrittenAt.ToUnixTimeSeconds() ?? 0}");
}
