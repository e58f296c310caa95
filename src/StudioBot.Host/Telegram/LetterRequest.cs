using StudioBot.Host.Sending;
using StudioBot.Records.Post;
using Telegram.Bot.Requests;
using Telegram.Bot.Requests.Abstractions;
using Telegram.Bot.Types;
using Telegram.Bot.Types.Enums;
using Telegram.Bot.Types.ReplyMarkups;

namespace StudioBot.Host.Telegram;

/// <summary>A letter as a request to the service.</summary>
internal static class LetterRequest
{
    private static readonly LinkPreviewOptions NoPreview = new() { IsDisabled = true };

    /// <summary>A new message: words alone, or a file with the words as its caption.</summary>
    /// <param name="chat">Where to.</param>
    /// <param name="letter">What.</param>
    /// <param name="isBare">Without markup and buttons.</param>
    public static IRequest<Message> Send(long chat, Letter letter, bool isBare) => letter.File switch
    {
        { } picture when letter.BringsPicture => Photo(chat, letter, picture, isBare),
        { } file => Document(chat, letter, file, isBare),
        null => Words(chat, letter, isBare),
    };

    private static SendMessageRequest Words(long chat, Letter letter, bool isBare) => new()
    {
        ChatId = chat,
        Text = isBare ? letter.Plain : letter.Html,
        ParseMode = isBare ? ParseMode.None : ParseMode.Html,
        ReplyMarkup = isBare ? null : Keys(letter),
        LinkPreviewOptions = NoPreview,
        ReplyParameters = Asked(letter),
    };

    private static SendPhotoRequest Photo(long chat, Letter letter, PostFile picture, bool isBare) => new()
    {
        ChatId = chat,
        Photo = InputFile.FromStream(new MemoryStream(picture.Content, writable: false), picture.Name),
        Caption = isBare ? letter.Plain : letter.Html,
        ParseMode = isBare ? ParseMode.None : ParseMode.Html,
        ReplyMarkup = isBare ? null : Keys(letter),
        ReplyParameters = Asked(letter),
    };

    // Every try reads the bytes from their beginning.
    private static SendDocumentRequest Document(long chat, Letter letter, PostFile file, bool isBare) => new()
    {
        ChatId = chat,
        Document = InputFile.FromStream(new MemoryStream(file.Content, writable: false), file.Name),
        Caption = isBare ? letter.Plain : letter.Html,
        ParseMode = isBare ? ParseMode.None : ParseMode.Html,
        ReplyMarkup = isBare ? null : Keys(letter),
        ReplyParameters = Asked(letter),
    };

    private static ReplyParameters? Asked(Letter letter) => letter.ReplyTo is { } asked
        ? new ReplyParameters { MessageId = (int)asked, AllowSendingWithoutReply = true }
        : null;

    /// <summary>An earlier message with new words; its buttons go unless they are sent again.</summary>
    public static EditMessageTextRequest Edit(long chat, int message, Letter letter, bool isBare) => new()
    {
        ChatId = chat,
        MessageId = message,
        Text = isBare ? letter.Plain : letter.Html,
        ParseMode = isBare ? ParseMode.None : ParseMode.Html,
        ReplyMarkup = isBare ? null : Keys(letter),
        LinkPreviewOptions = NoPreview,
    };

    /// <summary>The pin in a message, or out of it; it makes no sound.</summary>
    public static IRequest<bool> Pin(long chat, int message, bool isPinned) => isPinned
        ? new PinChatMessageRequest { ChatId = chat, MessageId = message, DisableNotification = true }
        : new UnpinChatMessageRequest { ChatId = chat, MessageId = message };

    private static InlineKeyboardMarkup? Keys(Letter letter) => letter.Keys.Count == 0
        ? null
        : new InlineKeyboardMarkup(letter.Keys.Select(row =>
            row.Select(key => InlineKeyboardButton.WithCallbackData(key.Label, key.Data))));
}
