using System.Text.Json;
using StudioBot.Host.Telegram;

namespace StudioBot.Host.Tests.Telegram;

public sealed class ReceivedUpdateTests
{
    [Fact]
    public void A_message_is_known_by_its_chat_and_number()
    {
        var update = Read("""{"update_id":5,"message":{"message_id":3,"chat":{"id":-100},"text":"hi"}}""")!;
        Assert.Equal(
            (5, "message", -100, 3, null),
            (update.UpdateId, update.Kind, update.Chat, update.Message, update.Press));
    }

    [Fact]
    public void Each_edit_is_a_kind_of_its_own()
    {
        var first = Read("""{"update_id":6,"edited_message":{"message_id":3,"edit_date":10,"chat":{"id":7}}}""")!;
        var second = Read("""{"update_id":7,"edited_message":{"message_id":3,"edit_date":20,"chat":{"id":7}}}""")!;
        Assert.NotEqual(first.Kind, second.Kind);
    }

    [Fact]
    public void A_press_is_known_by_its_own_number_and_stands_in_the_chat_of_its_message()
    {
        var update = Read(
            """{"update_id":8,"callback_query":{"id":"p1","message":{"message_id":3,"chat":{"id":7}},"data":"x"}}""")!;
        Assert.Equal(("callback_query", 7, "p1"), (update.Kind, update.Chat, update.Press));
    }

    [Theory]
    [InlineData("""{"update_id":9,"brand_new":{"surprise":[1,2]}}""", "brand_new")]
    [InlineData("""{"update_id":9}""", "unknown")]
    [InlineData("""{"update_id":9,"message":"no object"}""", "unknown")]
    [InlineData("""{"update_id":9,"message":{"chat":{"id":"seven"},"message_id":1e400}}""", "message")]
    public void Unknown_shapes_are_kept_without_harm(string raw, string kind)
    {
        var update = Read(raw)!;
        Assert.Equal((9, kind, 0), (update.UpdateId, update.Kind, update.Chat));
        Assert.Equal(raw, update.Raw);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("17")]
    [InlineData("""{"update_id":"five"}""")]
    public void Without_a_number_it_can_t_be_kept(string raw) => Assert.Null(Read(raw));

    private static ReceivedUpdate? Read(string raw) => ReceivedUpdate.Of(JsonDocument.Parse(raw).RootElement);
}
