using System.Text.Json;
using System.Text.Json.Nodes;
using StudioBot.Chat;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Telegram;

public sealed class ChatEventTests
{
    private const long Us = 123456789;

    [Fact]
    public void Words_come_with_who_where_and_when()
    {
        var message = Message(StandInUpdates.Message(1, 7, 3, "ratio 3:1"));
        Assert.Equal(
            new ChatMessage(
                7, ChatKind.Private, 3, 7, "Nora", "ratio 3:1", DateTimeOffset.FromUnixTimeSeconds(1_764_000_000)),
            message);
    }

    [Fact]
    public void A_photo_s_caption_is_its_words()
    {
        var update = StandInUpdates.Message(1, 7, 3, null);
        update["message"]!["caption"] = "note 17 cells";
        Assert.Equal("note 17 cells", Message(update).Words);
    }

    [Fact]
    public void A_message_without_words_has_none() =>
        Assert.Equal("", Message(StandInUpdates.Message(1, 7, 3, null)).Words);

    [Theory]
    [InlineData(Us, true)]
    [InlineData(42L, false)]
    public void An_answer_to_us_is_told_from_an_answer_to_others(long author, bool toUs)
    {
        var update = StandInUpdates.Message(1, StandInUpdates.GroupChat, 3, "17");
        update["message"]!["reply_to_message"] = new JsonObject
        {
            ["message_id"] = 2,
            ["date"] = 1,
            ["chat"] = new JsonObject { ["id"] = StandInUpdates.GroupChat, ["type"] = "supergroup" },
            ["from"] = new JsonObject { ["id"] = author, ["is_bot"] = true, ["first_name"] = "B" },
        };
        Assert.Equal(toUs, Message(update).RepliesToBot);
    }

    [Fact]
    public void What_was_passed_on_is_nobody_s_own_word()
    {
        var update = StandInUpdates.Message(1, 7, 3, "used 20 ml white");
        update["message"]!["forward_origin"] = new JsonObject
        {
            ["type"] = "hidden_user",
            ["date"] = 1,
            ["sender_user_name"] = "Someone",
        };
        Assert.True(Message(update).IsForwarded);
    }

    [Theory]
    [InlineData(1087968824L, Standing.Anonymous)]   // the service's account for a person who writes as the group
    [InlineData(136817688L, Standing.Channel)]      // and as a channel
    public void Who_writes_as_the_group_or_a_channel_is_unknown(long author, Standing mask)
    {
        var update = StandInUpdates.Message(1, StandInUpdates.GroupChat, 3, "/stock");
        update["message"]!["from"] = new JsonObject { ["id"] = author, ["is_bot"] = true, ["first_name"] = "G" };
        Assert.Equal(mask, Message(update).Mask);
    }

    [Theory]
    [InlineData("supergroup", Standing.Anonymous)]
    [InlineData("channel", Standing.Channel)]
    public void So_is_who_hides_behind_a_chat_whatever_account_is_named(string kind, Standing mask)
    {
        var update = StandInUpdates.Message(1, StandInUpdates.GroupChat, 3, "/stock");
        update["message"]!["sender_chat"] = new JsonObject { ["id"] = -7, ["type"] = kind, ["title"] = "T" };
        Assert.Equal(mask, Message(update).Mask);
    }

    [Fact]
    public void What_another_bot_wrote_for_somebody_is_not_their_own_word()
    {
        var update = StandInUpdates.Message(1, 7, 3, "used 20 ml white");
        update["message"]!["via_bot"] = new JsonObject { ["id"] = 9, ["is_bot"] = true, ["first_name"] = "B" };
        Assert.True(Message(update).IsForwarded);
    }

    [Theory]
    [InlineData("migrate_to_chat_id", -5, -1005, -5, -1005)]
    [InlineData("migrate_from_chat_id", -1005, -5, -5, -1005)]
    public void A_group_that_became_a_supergroup_is_told_from_either_side(
        string field, long chat, long other, long from, long to)
    {
        var update = StandInUpdates.Message(1, chat, 3, null);
        update["message"]![field] = other;
        Assert.Equal(new ChatEvent.Moved(from, to), ChatEvent.Read(update.ToJsonString(), Us));
    }

    [Theory]
    [InlineData("""
        {"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":7,"type":"private"},
        "from":{"id":9,"is_bot":true,"first_name":"B"},"text":"x"}}
        """)]
    [InlineData("""
        {"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":-7,"type":"supergroup"},
        "from":{"id":777000,"is_bot":false,"first_name":"T"},"text":"x"}}
        """)]
    [InlineData("""{"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":-7,"type":"channel"},"text":"x"}}""")]
    [InlineData("""
        {"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":7,"type":"private"},
        "from":{"id":7,"is_bot":false,"first_name":"N"},
        "pinned_message":{"message_id":2,"date":1,"chat":{"id":7,"type":"private"},"text":"used 20 ml white"}}}
        """)]
    [InlineData("""
        {"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":-7,"type":"group"},
        "from":{"id":7,"is_bot":false,"first_name":"N"},"group_chat_created":true}}
        """)]
    [InlineData("""
        {"update_id":1,"message":{"message_id":3,"date":1,"chat":{"id":-7,"type":"group"},
        "from":{"id":7,"is_bot":false,"first_name":"N"},
        "left_chat_member":{"id":7,"is_bot":false,"first_name":"/stop lot W-1"}}}
        """)]
    [InlineData("""{"update_id":1,"poll":{"id":"1"}}""")]
    [InlineData("""{"update_id":1}""")]
    public void Bots_channels_and_unknown_kinds_are_passed_over(string raw) =>
        Assert.IsType<ChatEvent.Passed>(ChatEvent.Read(raw, Us));

    [Fact]
    public void A_press_is_its_presser_s_and_meant_for_us()
    {
        var raw = StandInUpdates.Press(1, StandInUpdates.GroupChat, 3, "p1", "help").ToJsonString();
        var press = Assert.IsType<ChatEvent.Pressed>(ChatEvent.Read(raw, Us));
        Assert.Equal(
            ("p1", "help", 77L, true),
            (press.Id, press.Data, press.Message.UserId, press.Message.RepliesToBot));
    }

    [Fact]
    public void What_can_t_be_read_is_said_to_be_so() =>
        Assert.ThrowsAny<JsonException>(() => ChatEvent.Read("""{"update_id":1,"message":{"message_id":"x"}}""", Us));

    private static ChatMessage Message(JsonObject update) =>
        Assert.IsType<ChatEvent.Wrote>(ChatEvent.Read(update.ToJsonString(), Us)).Message;
}
