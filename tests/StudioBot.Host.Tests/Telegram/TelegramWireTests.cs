using Microsoft.Extensions.Logging.Abstractions;
using NSubstitute;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Records.Post;
using Telegram.Bot;
using Telegram.Bot.Exceptions;
using Telegram.Bot.Requests;

namespace StudioBot.Host.Tests.Telegram;

public sealed class TelegramWireTests : IAsyncLifetime
{
    private const long Nora = 7;

    private static readonly Letter Marked =
        new("<b>250 mL</b> &lt;3:1&gt;", "250 mL <3:1>", [[new Key("Double", "ratio 3:1 500 ml")]]);

    private static readonly PostFile Table = new("usage-2026-11.csv", "text/csv", "\uFEFFa,b\r\n"u8.ToArray());

    private static readonly PostFile Drawn = new("piece-17.png", "image/png", Png.Blank());

    private StandIn standIn = null!;
    private TelegramWire wire = null!;

    public async Task InitializeAsync()
    {
        standIn = await StandIn.Start();
        wire = Wire(Bots.At(standIn).Calling);
    }

    public async Task DisposeAsync() => await standIn.DisposeAsync();

    [Fact]
    public async Task A_message_goes_out_with_its_markup_and_buttons()
    {
        Assert.IsType<Delivery.Sent>(await Send(Marked with { ReplyTo = 3 }));
        var call = Assert.Single(standIn.Sent);
        Assert.Equal((Nora, Marked.Html, true), (call.Chat, call.Text, call.IsHtml));
        Assert.True(call.Body.GetProperty("reply_parameters").GetProperty("allow_sending_without_reply").GetBoolean());
        Assert.True(call.Body.GetProperty("link_preview_options").GetProperty("is_disabled").GetBoolean());
    }

    [Fact]
    public async Task A_message_is_pinned_without_a_sound_and_unpinned_again()
    {
        Assert.IsType<Delivery.Sent>(await wire.Pin(-1001, 12, isPinned: true, CancellationToken.None));
        Assert.IsType<Delivery.Sent>(await wire.Pin(-1001, 12, isPinned: false, CancellationToken.None));
        var pin = Assert.Single(standIn.Calls, call => call.Method == "pinChatMessage");
        var unpin = Assert.Single(standIn.Calls, call => call.Method == "unpinChatMessage");
        Assert.True(pin.Body.GetProperty("disable_notification").GetBoolean());
        Assert.All([pin, unpin], call => Assert.Equal(12, call.Body.GetProperty("message_id").GetInt32()));
    }

    [Theory]
    [InlineData(400, "Bad Request: not enough rights to manage pinned messages in the chat", typeof(Delivery.Refused))]
    [InlineData(400, "Bad Request: message to pin not found", typeof(Delivery.Sent))]
    [InlineData(400, "Bad Request: CHAT_NOT_MODIFIED", typeof(Delivery.Sent))]
    [InlineData(429, "Too Many Requests: retry after 7", typeof(Delivery.Again))]
    [InlineData(403, "Forbidden: bot was kicked from the group chat", typeof(Delivery.Gone))]
    [InlineData(500, "Internal Server Error", typeof(Delivery.Again))]
    public async Task What_comes_back_of_a_pin_is_understood(int code, string why, Type becomes)
    {
        standIn.Script("pinChatMessage", Answer.No(code, why));
        Assert.IsType(becomes, await wire.Pin(-1001, 12, isPinned: true, CancellationToken.None));
    }

    [Fact]
    public async Task A_file_goes_out_with_the_words_as_its_caption()
    {
        Assert.IsType<Delivery.Sent>(await Send(Marked with { ReplyTo = 3, File = Table }));
        var call = Assert.Single(standIn.Sent);
        Assert.Equal(("sendDocument", Nora, Marked.Html, true), (call.Method, call.Chat, call.Text, call.IsHtml));
        Assert.Equal(Table.Name, call.File!.Value.Name);
        Assert.Equal(Table.Content, call.File.Value.Content);
        Assert.Equal("ratio 3:1 500 ml", call.DataOf("Double"));
        Assert.Equal(3, call.Body.GetProperty("reply_parameters").GetProperty("message_id").GetInt32());
    }

    [Fact]
    public async Task A_caption_that_is_not_taken_goes_out_plainly_with_the_whole_file()
    {
        Assert.IsType<Delivery.Sent>(await Send(new Letter("<b>1 < 2", "1 < 2", []) { File = Table }));
        Assert.Equal(["<b>1 < 2", "1 < 2"], standIn.Sent.Select(call => call.Text));
        Assert.All(standIn.Sent, call => Assert.Equal(Table.Content, call.File!.Value.Content));
    }

    [Fact]
    public async Task A_file_that_is_not_taken_at_all_is_refused()
    {
        standIn.Script("sendDocument", Answer.No(413, "Request Entity Too Large"), Answer.No(413, "Request Entity Too Large"));
        Assert.IsType<Delivery.Refused>(await Send(Marked with { File = Table }));
    }

    [Fact]
    public async Task A_file_is_sent_again_from_its_beginning()
    {
        standIn.Script("sendDocument", Answer.TooMany(1));
        Assert.IsType<Delivery.Again>(await Send(Marked with { File = Table }));
        Assert.IsType<Delivery.Sent>(await Send(Marked with { File = Table }));
        Assert.Equal(Table.Content, standIn.Sent[^1].File!.Value.Content);
    }

    [Fact]
    public async Task A_picture_is_shown_with_its_words_under_it_and_their_buttons()
    {
        Assert.IsType<Delivery.Sent>(await Send(Marked with { ReplyTo = 3, File = Drawn }));
        var call = Assert.Single(standIn.Sent);
        Assert.Equal(("sendPhoto", Nora, Marked.Html, true), (call.Method, call.Chat, call.Text, call.IsHtml));
        Assert.Equal(Drawn.Name, call.File!.Value.Name);
        Assert.Equal(Drawn.Content, call.File.Value.Content);
        Assert.Equal("ratio 3:1 500 ml", call.DataOf("Double"));
        Assert.Equal(3, call.Body.GetProperty("reply_parameters").GetProperty("message_id").GetInt32());
    }

    [Theory]
    [InlineData("Bad Request: IMAGE_PROCESS_FAILED")]
    [InlineData("Bad Request: not enough rights to send photos to the chat")]
    public async Task A_picture_that_is_not_taken_costs_nobody_its_words(string why)
    {
        standIn.Script("sendPhoto", Answer.No(400, why));
        Assert.IsType<Delivery.Sent>(await Send(Marked with { File = Drawn }));
        Assert.Equal(["sendPhoto", "sendMessage"], standIn.Sent.Select(call => call.Method));
        Assert.Equal((Marked.Html, "ratio 3:1 500 ml"), (standIn.Sent[^1].Text, standIn.Sent[^1].DataOf("Double")));
    }

    [Fact]
    public async Task A_picture_without_words_that_is_not_taken_is_refused()
    {
        standIn.Script("sendPhoto", Answer.No(400, "Bad Request: IMAGE_PROCESS_FAILED"), Answer.No(400, "Bad Request: IMAGE_PROCESS_FAILED"));
        Assert.IsType<Delivery.Refused>(await Send(new Letter("", "", []) { File = Drawn }));
    }

    [Fact]
    public async Task Words_do_not_take_the_place_of_a_file_s_caption_but_go_out_anew()
    {
        standIn.Script("editMessageText", Answer.No(400, "Bad Request: there is no text in the message to edit"));
        Assert.IsType<Delivery.Sent>(await wire.Edit(Nora, 5, Marked, CancellationToken.None));
        Assert.Equal(["editMessageText", "sendMessage"], standIn.Sent.Select(call => call.Method));
    }

    [Fact]
    public async Task Four_thousand_and_ninety_six_letters_pass_and_not_one_more()
    {
        Assert.IsType<Delivery.Sent>(await Send(Letters.Saying(new string('x', 4096))));
        Assert.IsType<Delivery.Refused>(await Send(Letters.Saying(new string('x', 4097))));
    }

    [Fact]
    public async Task Markup_that_is_not_taken_goes_out_as_plain_text_once()
    {
        Assert.IsType<Delivery.Sent>(await Send(new Letter("<b>1 < 2", "1 < 2", [])));
        Assert.Equal(["<b>1 < 2", "1 < 2"], standIn.Sent.Select(call => call.Text));
        Assert.Equal([true, false], standIn.Sent.Select(call => call.IsHtml));
    }

    [Fact]
    public async Task Buttons_that_are_not_taken_do_not_hold_the_words_back()
    {
        Assert.IsType<Delivery.Sent>(await Send(Marked with { Keys = [[new Key("x", new string('x', 65))]] }));
        Assert.Equal("250 mL <3:1>", standIn.Sent[^1].Text);
    }

    [Fact]
    public async Task A_chat_that_moved_is_told_and_nothing_is_sent_there_by_the_way()
    {
        standIn.Script(call => call.Chat == -5, Answer.MovedTo(-1005));
        Assert.Equal(new Delivery.Moved(-1005), await wire.Send(-5, Marked, CancellationToken.None));
        Assert.Equal([-5L], standIn.Sent.Select(call => call.Chat));
    }

    [Fact]
    public async Task Too_many_is_answered_with_the_service_s_own_delay()
    {
        standIn.Script("sendMessage", Answer.TooMany(17));
        Assert.Equal(TimeSpan.FromSeconds(17), Assert.IsType<Delivery.Again>(await Send(Marked)).After);
        Assert.Single(standIn.Sent);
    }

    public static TheoryData<string> Lost => ["reset", "502", "bad JSON"];

    [Theory]
    [MemberData(nameof(Lost))]
    public async Task A_lost_answer_says_nothing_about_the_message_and_is_not_repeated_here(string how)
    {
        standIn.Script("sendMessage", how switch
        {
            "reset" => Answer.Reset,
            "502" => Answer.BadGateway,
            _ => Answer.BadJson,
        });
        Assert.IsType<Delivery.Unclear>(await Send(Marked));
        Assert.Single(standIn.Sent);
    }

    [Fact]
    public async Task An_answer_that_does_not_come_is_unclear_too()
    {
        standIn.Script("sendMessage", Answer.Never);
        var hasty = Wire(Bots.At(standIn).Calling, TimeSpan.FromMilliseconds(200));
        Assert.IsType<Delivery.Unclear>(await hasty.Send(Nora, Marked, CancellationToken.None));
    }

    [Fact]
    public async Task Without_a_connection_nothing_was_sent()
    {
        var clients = Bots.At(standIn);
        await standIn.DisposeAsync();
        Assert.IsType<Delivery.Again>(await Wire(clients.Calling).Send(Nora, Marked, CancellationToken.None));
    }

    [Fact]
    public async Task Who_blocked_us_is_gone()
    {
        standIn.Script("sendMessage", Answer.Blocked, Answer.No(400, "Bad Request: chat not found"));
        Assert.IsType<Delivery.Gone>(await Send(Marked));
        Assert.IsType<Delivery.Gone>(await Send(Marked));
    }

    [Fact]
    public async Task An_edit_that_changes_nothing_is_done()
    {
        standIn.Script("editMessageText", Answer.No(400, "Bad Request: message is not modified: same"));
        Assert.Equal(new Delivery.Sent(9), await wire.Edit(Nora, 9, Marked, CancellationToken.None));
    }

    [Fact]
    public async Task Where_there_is_nothing_to_edit_it_is_sent_anew()
    {
        standIn.Script("editMessageText", Answer.No(400, "Bad Request: message to edit not found"));
        Assert.IsType<Delivery.Sent>(await wire.Edit(Nora, 9, Marked, CancellationToken.None));
        Assert.Equal(["editMessageText", "sendMessage"], standIn.Sent.Select(call => call.Method));
    }

    [Fact]
    public async Task A_service_that_is_down_is_left_alone_for_a_while()
    {
        standIn.Script("sendMessage", [.. Enumerable.Repeat(Answer.BadGateway, 20)]);
        for (var tries = 0; tries < 20; tries++)
        {
            await Send(Marked);
        }

        Assert.InRange(standIn.Sent.Count, 6, 12);
    }

    [Fact]
    public async Task A_late_answer_to_a_press_does_no_harm()
    {
        standIn.Script("answerCallbackQuery", Answer.No(400, "Bad Request: query is too old"));
        Assert.False(await wire.AnswerPress("p1", null, CancellationToken.None));
        Assert.True(await wire.AnswerPress("p2", "Somebody else's.", CancellationToken.None));
    }

    [Fact]
    public async Task Being_stopped_is_no_answer_of_the_service()
    {
        standIn.Script("sendMessage", Answer.Never);
        using var stop = new CancellationTokenSource();
        var sending = wire.Send(Nora, Marked, stop.Token);
        await standIn.Until(1, call => call.Method == "sendMessage");
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => sending);
    }

    [Theory]
    [InlineData(401, typeof(Delivery.Again))]
    [InlineData(500, typeof(Delivery.Unclear))]
    [InlineData(418, typeof(Delivery.Refused))]
    public async Task Each_refusal_has_its_road(int code, Type road)
    {
        var bot = Substitute.For<ITelegramBotClient>();
        bot.SendRequest(Arg.Any<SendMessageRequest>(), Arg.Any<CancellationToken>())
            .Returns<global::Telegram.Bot.Types.Message>(_ => throw new ApiRequestException("no", code));
        Assert.IsType(road, await Wire(bot).Send(Nora, Marked, CancellationToken.None));
    }

    private Task<Delivery> Send(Letter letter) => wire.Send(Nora, letter, CancellationToken.None);

    private static TelegramWire Wire(ITelegramBotClient bot, TimeSpan? longest = null) => new(
        bot,
        new CallGuard(longest ?? TimeSpan.FromSeconds(20), TimeProvider.System),
        NullLogger<TelegramWire>.Instance);
}
