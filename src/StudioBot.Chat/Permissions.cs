using StudioBot.Chat.House;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Chat;

/// <summary>Who may say what where: what is not allowed here is refused, also when a button says it.</summary>
internal static class Permissions
{
    private const string NotOfTheStudio = "not of the studio";
    private const string NobodyKnown = "nobody knows by whom";
    private const string NotOurGroup = "not the studio's group";
    private const string ForStewards = "for stewards";
    private const string InPrivate = "in private only";

    // From so many letters on a word of a stranger may be a code, or nearly one.
    private const int CodeLetters = 8;

    private static readonly Reply Masked = new(
        new Block.Line("Written as the group or a channel, so nobody knows by whom."),
        new Block.Line("Turn off anonymous, or write to me in private."))
    {
        IsTrouble = true,
    };

    /// <summary>The one neutral line to who does not belong to the studio.</summary>
    public static Reply Stranger { get; } = new(new Block.Line("Ask a steward of this studio for an invitation."))
    {
        IsTrouble = true,
    };

    /// <summary>Why this command is not for them, or not there; none where it is.</summary>
    public static string? Against(Command form, Standing who, Place where) => who switch
    {
        Standing.Stranger or Standing.Left =>
            form is Act { IsForStrangers: true } && where == Place.Private ? null : NotOfTheStudio,
        Standing.Anonymous or Standing.Channel => NobodyKnown,
        _ when where == Place.OtherGroup && !(form is StudioHere && who == Standing.Steward) => NotOurGroup,
        _ when form.Sheet.StewardsOnly && who != Standing.Steward => ForStewards,
        _ when form.Sheet.PrivateOnly && where != Place.Private => InPrivate,
        _ => null,
    };

    /// <summary>What comes of a message that is not for them, or not there; none where it is.</summary>
    /// <param name="heard">How it was understood; not silence.</param>
    /// <param name="turn">The message.</param>
    /// <param name="session">Where is kept who has heard already that they are none of the studio's.</param>
    public static Outcome? Against(Heard heard, Turn turn, StudioSession session)
    {
        var (who, where) = (StandingOf(turn, session), PlaceOf(turn, session));
        var forms = heard is Heard.Told or Heard.Asked || who is Standing.Member or Standing.Steward ? heard.Forms : [];
        var (form, why) = forms.Count == 0
            ? (null, AgainstAny(who, where))
            : forms.Select(one => ((Command?)one, Against(one, who, where)))
                .FirstOrDefault(one => one.Item2 is not null);
        return why is null ? null
            : new Outcome(Said(why, form, turn), OnlyAsked: true)
            {
                Barred = new Barred(who, WordsOf(turn, who), why),
                IsSilent = !MayHear(why, where, turn, session),
            };
    }

    /// <summary>The same for who tried a code and is a stranger still.</summary>
    public static Outcome StillStranger(Outcome outcome, Turn turn, StudioSession session) => outcome with
    {
        Barred = new Barred(StandingOf(turn, session), WordsOf(turn, Standing.Stranger), "no such code"),
        IsSilent = !MayHear(NotOfTheStudio, PlaceOf(turn, session), turn, session),
    };

    /// <summary>Something that a command itself refused, or that was somebody else's word.</summary>
    public static Barred Noted(string why, Turn turn, StudioSession session)
    {
        var who = StandingOf(turn, session);
        return new Barred(who, WordsOf(turn, who), why);
    }

    // What could not be read, or not for certain, is answered only where something could be.
    private static string? AgainstAny(Standing who, Place where) => who switch
    {
        Standing.Stranger or Standing.Left => NotOfTheStudio,
        Standing.Anonymous or Standing.Channel => NobodyKnown,
        _ => where == Place.OtherGroup ? NotOurGroup : null,
    };

    private static Reply Said(string why, Command? form, Turn turn) => why switch
    {
        NotOfTheStudio => Stranger,
        NobodyKnown => Masked,
        NotOurGroup => Elsewhere(turn),
        ForStewards => Refused($"Only a steward may do that: {form?.Sheet.Word}."),
        _ => Refused($"Write that to me in private: {form?.Sheet.Word}."),
    };

    // Strangers hear one line a day and in private only; a group that is not ours one a day, whoever asks in it.
    private static bool MayHear(string why, Place where, Turn turn, StudioSession session) => why switch
    {
        NotOfTheStudio => where == Place.Private
            && turn.UserId is { } account && session.Strangers.MayHear(account, turn.Now),
        NotOurGroup => turn.ChatId is { } chat && session.Strangers.MayHear(chat, turn.Now),
        NobodyKnown => where != Place.OtherGroup,
        _ => true,
    };

    private static Standing StandingOf(Turn turn, StudioView view) => turn switch
    {
        { Mask: { } mask } => mask,
        { Member.Role: Role.Steward } => Standing.Steward,
        { Member: not null } => Standing.Member,
        { UserId: { } account } when view.Members.Former(account) is not null => Standing.Left,
        _ => Standing.Stranger,
    };

    private static Place PlaceOf(Turn turn, StudioView view) => turn.Chat == ChatKind.Private ? Place.Private
        : StudioGroup.Of(view) is { } ours && turn.ChatId is { } here && ours != here ? Place.OtherGroup
        : Place.StudioGroup;

    private static string WordsOf(Turn turn, Standing who) => who is Standing.Stranger or Standing.Left
        ? string.Join(' ', turn.Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Length < CodeLetters ? word : "…"))
        : turn.Words;

    private static Reply Refused(string why) =>
        new(new Block.Headline(why), new Block.Line("Nothing recorded.")) { IsTrouble = true };

    private static Reply Elsewhere(Turn turn)
    {
        List<Block> blocks = [new Block.Line("This is not the studio's group. Write to me in private.")];
        if (turn.Who.IsSteward)
        {
            blocks.AddRange([new Block.Line("To make it the studio's group:"), new Block.Sample(StudioHere.Line)]);
        }

        return new Reply(blocks) { IsTrouble = true };
    }
}
