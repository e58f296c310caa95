using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>Who may say what where.</summary>
internal static class Permissions
{
    /// <summary>The one neutral line to who does not belong to the studio.</summary>
    public static Reply Stranger { get; } = new(new Block.Line("Ask a steward of this studio for an invitation."))
    {
        IsTrouble = true,
    };

    /// <summary>Why this command is not answered here and to them; none where it is.</summary>
    public static Reply? Against(Command form, Turn turn) => form.Sheet switch
    {
        { StewardsOnly: true } when !turn.Who.IsSteward => Refused($"Only a steward may do that: {form.Sheet.Word}."),
        { PrivateOnly: true } when turn.Chat == ChatKind.Group => Refused(
            $"Write that to me in private: {form.Sheet.Word}."),
        _ => null,
    };

    private static Reply Refused(string why) =>
        new(new Block.Headline(why), new Block.Line("Nothing recorded.")) { IsTrouble = true };
}
