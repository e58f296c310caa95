using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>members refused</c>: who was refused what lately, and why.</summary>
internal sealed class MembersRefused : Ask
{
    private const int MostShown = 100;

    private static readonly ChoiceSlot Word = new("", "refused", ["refused"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "What was refused to whom.",
        [Word, RowPages.Page],
        ["members refused"])
    {
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var last = studio.View.Refusals.Last(MostShown);
        return last.Count == 0
            ? new Reply(new Block.Headline("Nothing was refused to anybody."))
            : RowPages.Of(
                last.Count == MostShown
                    ? $"The last {Show.Number(MostShown, 0)} refusals, the newest first"
                    : $"{Show.Number(last.Count, 0)} refused, the newest first",
                [],
                [.. last.Select(one => new RowGroup(
                    $"{Show.Day(DateOnly.FromDateTime(WallTime.Of(one.At, studio)))} {WallTime.Clock(one.At, studio)}, "
                        + Who(one, studio),
                    [new Figure(OneLine(one.Words), one.Why)]))],
                [],
                said);
    }

    // As the studio calls them, where it knows them; else by account, and as they call themselves.
    private static string Who(Refused one, Studio studio) => one switch
    {
        { UserId: 0 } => "forgotten",
        { Standing: Standing.Anonymous } => "as the group",
        { Standing: Standing.Channel } => "as a channel",
        _ when studio.View.Members.ByAccount(one.UserId) is { } member =>
            $"{member.Name}, {WordOf(one.Standing)} then",
        _ => $"{OneLine(one.Name)}, {WordOf(one.Standing)} {one.UserId.ToString(CultureInfo.InvariantCulture)}",
    };

    private static string WordOf(Standing standing) => standing switch
    {
        Standing.Steward => "steward",
        Standing.Member => "member",
        Standing.Left => "who left",
        _ => "stranger",
    };

    private static string OneLine(string words)
    {
        var line = string.Concat(words.Select(letter => char.IsControl(letter) ? ' ' : letter)).Trim();
        return line.Length > 0 ? line : "–";
    }
}
