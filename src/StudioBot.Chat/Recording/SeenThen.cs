using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Recording;

/// <summary>When something was seen of which minutes count: that a coat is tacky, that a cup has gelled.</summary>
internal static class SeenThen
{
    private static readonly char[] Between = [' ', ',', '.', ';', '!', '?'];

    // Other commands pass over them.
    private static readonly HashSet<string> Denials =
        new(["no", "not", "yet", "but", "isnt", "isn't", "almost", "nearly"], StringComparer.OrdinalIgnoreCase);

    /// <summary>The trouble with words beside it: they may say that it is so in one place only, or not at all. None
    /// where there are none.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="sample">A line that keeps them.</param>
    public static Misread? WithWords(Phrase said, string sample) => said.Remark.Length > 0
        ? new Misread(said.Remark, "says more than that: keep it as a note", $"{sample} {said.Remark}")
        : said.Typed.Split(Between, StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(Denials.Contains) is { } no
        ? new Misread(no, "says that it is not so: keep it as a note", Denied(sample))
        : null;

    /// <summary>The trouble with a moment that is still to come, or with a day whose hour nobody said. None where there
    /// is none.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="writing">When.</param>
    /// <param name="sample">A line that works, without a moment.</param>
    public static Reply? Against(Phrase said, Writing writing, string sample)
    {
        if (!said.Has(RecordSlots.Seen))
        {
            return null;
        }

        var moment = said.Of(RecordSlots.Seen);
        return moment > writing.Turn.Local
            ? TalkedOf.Trouble(
                $"{RecordSlots.Seen.Say(said)} is still to come: a record is of what was. Nothing recorded.", sample)
            : moment.TimeOfDay == TimeSpan.Zero && moment.Date < writing.Turn.Local.Date
            ? TalkedOf.Trouble(
                $"At what hour, {RecordSlots.Seen.Say(said)}? Minutes count. Nothing recorded.",
                $"{sample} yesterday 14:20")
            : null;
    }

    /// <summary>, yesterday 23:50: behind how long it took, where that was on an earlier day; else nothing.</summary>
    public static string Behind(Writing writing)
    {
        var zone = writing.Turn.Zone;
        return (zone.DateOf(writing.Now).DayNumber - zone.DateOf(writing.HappenedAt).DayNumber) switch
        {
            0 => "",
            1 => $", yesterday {Show.Clock(writing.HappenedAt, writing.Turn)}",
            _ => $", {Show.Moment(writing.HappenedAt, writing.Turn)}",
        };
    }

    // note 17 tacky: note 17 not tacky.
    private static string Denied(string sample) => sample.Insert(sample.LastIndexOf(' '), " not");
}
