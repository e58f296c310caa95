using System.Globalization;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.House;

/// <summary><c>studio group here</c>, said in a group: makes it the studio's own.</summary>
internal sealed class StudioHere : Act
{
    /// <summary>As it is typed in a group.</summary>
    public const string Line = "/studio group here";

    private static readonly ChoiceSlot Here = new("group", "here", ["here"]) { Leads = ["group"], IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "Makes a group the studio's own.",
        [Here],
        ["studio group here"])
    {
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        if (writing.Turn is not { Chat: ChatKind.Group, ChatId: { } chat })
        {
            return new Reply(
                new Block.Headline("Say it in that group. Nothing recorded."),
                new Block.Sample(Line))
            {
                IsTrouble = true,
            };
        }

        writing.Session.Studio.Set(StudioGroup.Name, chat.ToString(CultureInfo.InvariantCulture), writing.Act);
        Wall.MoveTo(chat, writing);
        return new Reply(
            new Block.Headline("This is the studio's group from now on."),
            new Block.Line("What is for all is told here, and members are answered. In other groups I keep still."));
    }
}
