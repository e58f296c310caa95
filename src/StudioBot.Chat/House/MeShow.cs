using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.House;

/// <summary><c>me</c>: what you have set.</summary>
internal sealed class MeShow : Ask
{
    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "me", Room.House, "What you have set.",
        [],
        ["me"])
    {
        Also = ["settings"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var view = studio.View;
        var member = turn.Member ?? view.Members.All().FirstOrDefault(one => one.Name == turn.Who.Name);
        var wishes = member is null ? new Wishes() : view.Wishes.Of(member.Id);
        var quiet = new PingTurn(studio, turn.Now).QuietOf(member?.Id);
        var units = member?.Units ?? view.Studio.Settings()?.Units ?? UnitSystem.Metric;
        List<Figure> rows =
        [
            new("Units", UnitsWord.Of(units) + Whose(member?.Units is null)),
            new("Quiet", QuietSetting.Said((quiet.From, quiet.Until)) + Whose(wishes.Quiet is null)),
        ];
        List<Block> blocks =
        [
            new Block.Headline($"{member?.Name ?? turn.Who.Name}, {(turn.Who.IsSteward ? "steward" : "member")}"),
            new Block.Figures(rows),
        ];
        if (wishes.Woken)
        {
            blocks.Add(new Block.Line("A window that closes at night wakes you."));
        }

        var off = wishes.Unwanted.Select(Word).OfType<string>().ToList();
        blocks.AddRange(
        [
            new Block.Line(off.Count > 0 ? $"Switched off: {string.Join(", ", off)}." : "No ping is switched off."),
            new Block.Line("Set with"),
            new Block.Sample("me quiet 22-8"),
            new Block.Sample("me mute torch"),
        ]);
        return new Reply(blocks, [new Button("The studio's", "studio")]);
    }

    private static string Whose(bool isOfStudio) => isOfStudio ? " (studio)" : "";

    private static string? Word(string kind) =>
        Enum.TryParse<PingKind>(kind, out var known) ? PingCatalogue.Of(known)?.Sheet.Word : null;
}
