using StudioBot.Chat.Reading;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

public sealed class AddressTests
{
    private static readonly Catalogue Catalogue = Catalogue.Find();

    [Theory]
    [InlineData("amounts 30cm panel", "amounts 30cm panel")]
    [InlineData("/amounts 30cm panel", "amounts 30cm panel")]
    [InlineData("/amounts@studio_bot 30cm panel", "amounts 30cm panel")]
    [InlineData("@studio_bot amounts 30cm panel", "amounts 30cm panel")]
    [InlineData("@Studio_Bot, amounts 30cm panel", "amounts 30cm panel")]
    [InlineData("\u200b stock ", "stock")]
    public void Alone_with_the_bot_every_word_is_for_it(string typed, string words) =>
        Assert.Equal(words, Of(typed, ChatKind.Private)?.Words);

    [Theory]
    [InlineData("/stock", "stock")]
    [InlineData("/stock@studio_bot", "stock")]
    [InlineData("@studio_bot stock", "stock")]
    [InlineData("/blomm@studio_bot", "blomm")]      // ours by name: it says that it does not know the word
    public void In_a_group_it_is_addressed_by_slash_or_name(string typed, string words) =>
        Assert.Equal(words, Of(typed, ChatKind.Group)?.Words);

    [Theory]
    [InlineData("stock is low")]
    [InlineData("/stock@other_bot")]                 // another bot's
    [InlineData("/weather")]                         // nobody's: another bot may know it
    [InlineData("@studio_bot_two stock")]
    [InlineData("hi @studio_bot")]                   // spoken of, not to
    public void In_a_group_the_rest_is_silence(string typed) => Assert.Null(Of(typed, ChatKind.Group));

    [Theory]
    [InlineData("stock", true)]
    [InlineData("17 is dry", true)]
    [InlineData("thanks!", false)]
    public void A_reply_to_the_bot_is_for_it_where_it_begins_with_a_command_or_a_piece(string typed, bool isMeant)
    {
        var turn = Sample.Turn(typed, ChatKind.Group) with { RepliesToBot = true };
        Assert.Equal(isMeant, Address.Of(turn, Catalogue, Sample.Studio.Words) is not null);
    }

    [Fact]
    public void After_a_slash_the_first_word_must_be_a_command()
    {
        Assert.True(Of("/stock", ChatKind.Private)!.IsSlash);
        Assert.False(Of("stock", ChatKind.Private)!.IsSlash);
    }

    private static Address? Of(string typed, ChatKind chat) =>
        Address.Of(Sample.Turn(typed, chat), Catalogue, Sample.Studio.Words);
}
