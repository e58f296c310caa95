using System.Globalization;
using System.Text.RegularExpressions;

namespace StudioBot.Host.Rehearsal;

/// <summary>Reads a talk: one line an event, remarks behind a hash.</summary>
internal static partial class TalkReader
{
    private const string Moment = "yyyy-MM-dd HH:mm";

    /// <summary>The lines that do something.</summary>
    /// <exception cref="TalkException">A line that says nothing known.</exception>
    public static IReadOnlyList<TalkLine> Read(IEnumerable<string> lines) =>
        [.. lines.Select((text, at) => Line(at + 1, text.Trim())).OfType<TalkLine>()];

    private static TalkLine? Line(int number, string text) => text switch
    {
        "" => null,
        ['#', '#', .. var told] => new TalkLine.Told(number, told.Trim()),
        ['#', ..] => null,
        ['>', .. var words] => new TalkLine.Must(number, text, words.Trim()),
        ['!', .. var words] => new TalkLine.MustNot(number, text, words.Trim()),
        ['+', .. var time] => new TalkLine.Later(number, text, Duration(number, time.Trim())),
        "stop" => new TalkLine.Stop(number, text),
        "start" => new TalkLine.Start(number, text),
        "studio empty" => new TalkLine.Studio(number, text, IsSample: false),
        "studio sample" or "sample" => new TalkLine.Studio(number, text, IsSample: true),
        "crash before commit" => new TalkLine.Crash(number, text, CrashPoint.BeforeCommit),
        "crash after commit" => new TalkLine.Crash(number, text, CrashPoint.AfterCommit),
        "crash after send" => new TalkLine.Crash(number, text, CrashPoint.AfterSend),
        _ when text.StartsWith("zone ", StringComparison.Ordinal) => new TalkLine.Zone(number, text, text[5..].Trim()),
        _ when text.StartsWith("members ", StringComparison.Ordinal) => Members(number, text),
        _ when text.StartsWith("at ", StringComparison.Ordinal) => At(number, text),
        _ => Said(number, text),
    };

    private static TalkLine.At At(int number, string text) =>
        DateTime.TryParseExact(
            text[3..].Trim(), Moment, CultureInfo.InvariantCulture, DateTimeStyles.None, out var local)
            ? new TalkLine.At(number, text, local)
            : throw new TalkException(number, $"“{text[3..].Trim()}” is no moment; try  at 2026-03-02 18:00");

    private static TimeSpan Duration(int number, string text)
    {
        var match = DurationPattern().Match(text);
        if (!match.Success)
        {
            throw new TalkException(number, $"“{text}” is no time; try  + 3 days");
        }

        var count = double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        return match.Groups[2].Value switch
        {
            "second" => TimeSpan.FromSeconds(count),
            "minute" => TimeSpan.FromMinutes(count),
            "hour" => TimeSpan.FromHours(count),
            "day" => TimeSpan.FromDays(count),
            _ => TimeSpan.FromDays(7 * count),
        };
    }

    // The first is a steward when none is named.
    private static TalkLine.Members Members(int number, string text)
    {
        var all = text[8..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(member => member.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Select(words => (Name: words[0].ToLowerInvariant(), IsSteward: words is [_, "steward"])).ToList();
        if (all.Count == 0)
        {
            throw new TalkException(number, "nobody is named; try  members pia steward, jonas");
        }

        if (!all.Exists(member => member.IsSteward))
        {
            all[0] = (all[0].Name, true);
        }

        return new TalkLine.Members(number, text, all);
    }

    private static TalkLine Said(int number, string text)
    {
        if (PressPattern().Match(text) is { Success: true } press)
        {
            return new TalkLine.Presses(
                number, text, Name(press), press.Groups[2].Success, press.Groups[3].Value.Trim());
        }

        if (SaidPattern().Match(text) is not { Success: true } said)
        {
            throw new TalkException(number, $"“{text}” says nothing known; try  pia: used 20 ml white");
        }

        return new TalkLine.Says(
            number,
            text,
            Name(said),
            said.Groups[2].Success,
            said.Groups[4].Value.Trim().Replace("\\n", "\n", StringComparison.Ordinal),
            HasPhoto: said.Groups[3].Value == "photo",
            Edits: said.Groups[3].Value == "edits");
    }

    private static string Name(Match match) => match.Groups[1].Value.ToLowerInvariant();

    [GeneratedRegex(@"^(\d+(?:\.\d+)?)\s*(second|minute|hour|day|week)s?$", RegexOptions.NonBacktracking)]
    private static partial Regex DurationPattern();

    [GeneratedRegex(@"^(\w+)(@group)?\s+presses\s+(.+)$", RegexOptions.NonBacktracking)]
    private static partial Regex PressPattern();

    [GeneratedRegex(@"^(\w+)(@group)?(?:\s+(photo|edits))?\s*:(.*)$", RegexOptions.NonBacktracking)]
    private static partial Regex SaidPattern();
}
