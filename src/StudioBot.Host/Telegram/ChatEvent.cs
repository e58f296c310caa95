using System.Text.Json;
using StudioBot.Chat;
using StudioBot.Records;
using StudioBot.Records.Members;
using Telegram.Bot;
using Telegram.Bot.Types;
using Telegram.Bot.Types.Enums;

namespace StudioBot.Host.Telegram;

/// <summary>What an update is to us.</summary>
internal abstract record ChatEvent
{
    // The service's own accounts for a person who writes as the group, and for one who writes as a channel.
    private const long GroupAsAuthor = 1087968824;
    private const long ChannelAsAuthor = 136817688;

    // The service itself, passing posts of a linked channel on.
    private const long ServiceAsAuthor = 777000;

    private ChatEvent()
    {
    }

    /// <summary>Somebody wrote.</summary>
    public sealed record Wrote(ChatMessage Message) : ChatEvent;

    /// <summary>Somebody changed what they had written.</summary>
    public sealed record Corrected(ChatMessage Message) : ChatEvent;

    /// <summary>Somebody pressed a button.</summary>
    /// <param name="Id">The service's number for the press.</param>
    /// <param name="Data">What the button carried.</param>
    /// <param name="Message">The press as a message; its words are still to be found from the data.</param>
    public sealed record Pressed(string Id, string Data, ChatMessage Message) : ChatEvent;

    /// <summary>A group became a supergroup, which has another number.</summary>
    /// <param name="From">The number it had.</param>
    /// <param name="To">The one it has.</param>
    public sealed record Moved(long From, long To) : ChatEvent;

    /// <summary>Nothing that is answered.</summary>
    public sealed record Passed(string Why) : ChatEvent;

    /// <summary>Reads an update.</summary>
    /// <param name="raw">As it came.</param>
    /// <param name="ourId">Our own account there.</param>
    /// <exception cref="JsonException">It is none that we know the shape of.</exception>
    public static ChatEvent Read(string raw, long ourId)
    {
        var update = JsonSerializer.Deserialize<Update>(raw, JsonBotAPI.Options) ?? throw new JsonException("Nothing.");
        return update switch
        {
            { Message: { MigrateToChatId: { } to } old } => new Moved(old.Chat.Id, to),
            { Message: { MigrateFromChatId: { } from } anew } => new Moved(from, anew.Chat.Id),
            { Message: { } message } => Reason(message) is { } why ? new Passed(why) : new Wrote(Of(message, ourId)),
            { EditedMessage: { } edited } =>
                Reason(edited) is { } why ? new Passed(why) : new Corrected(Of(edited, ourId)),
            { CallbackQuery: { Data: { } data, Message: { } shown } press } =>
                new Pressed(press.Id, data, Of(press.From, shown)),
            { CallbackQuery: not null } => new Passed("a press without its message"),
            { MyChatMember: { } change } => new Passed($"now {change.NewChatMember.Status} in chat {change.Chat.Id}"),
            _ => new Passed("an update of another kind"),
        };
    }

    /// <summary>The same where its chat is now: a group may have another number since it was written.</summary>
    public ChatEvent In(StudioSession session) => this switch
    {
        Wrote wrote => new Wrote(In(wrote.Message, session)),
        Corrected corrected => new Corrected(In(corrected.Message, session)),
        Pressed pressed => pressed with { Message = In(pressed.Message, session) },
        _ => this,
    };

    private static ChatMessage In(ChatMessage message, StudioSession session) =>
        session.Moves.Now(message.Chat) is var now && now != message.Chat
            ? message with { Chat = now, MovedFrom = message.Chat }
            : message;

    private static string? Reason(Message message) => message switch
    {
        { From: null } => "nobody's message",
        { From.Id: ServiceAsAuthor } => "passed on from a channel",
        { From.IsBot: true, From.Id: not GroupAsAuthor and not ChannelAsAuthor } => "another bot's message",
        { Chat.Type: ChatType.Channel } => "a channel's post",
        { IsServiceMessage: true, Type: not MessageType.Unknown } => "told by the service itself",
        _ => null,
    };

    private static ChatMessage Of(Message message, long ourId) => new(
        message.Chat.Id,
        KindOf(message.Chat),
        message.Id,
        message.From!.Id,
        message.From.FirstName,
        message.Text ?? message.Caption ?? "",
        new DateTimeOffset(message.EditDate ?? message.Date))
    {
        RepliesToBot = message.ReplyToMessage?.From?.Id == ourId,
        Photo = message.Photo is [.., var largest] ? largest.FileId : null,
        IsForwarded = message.ForwardOrigin is not null || message.ViaBot is not null,
        Mask = MaskOf(message),
    };

    private static Standing? MaskOf(Message message) => message switch
    {
        { SenderChat.Type: ChatType.Channel } or { From.Id: ChannelAsAuthor } => Standing.Channel,
        { SenderChat: not null } or { From.Id: GroupAsAuthor } => Standing.Anonymous,
        _ => null,
    };

    // A press is meant for the bot wherever it happens; its moment is not told, so it is when it came.
    private static ChatMessage Of(User presser, Message shown) => new(
        shown.Chat.Id, KindOf(shown.Chat), shown.Id, presser.Id, presser.FirstName, "", DateTimeOffset.MinValue)
    {
        RepliesToBot = true,
    };

    private static ChatKind KindOf(global::Telegram.Bot.Types.Chat chat) =>
        chat.Type == ChatType.Private ? ChatKind.Private : ChatKind.Group;
}
