using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class JoinCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_name_of_one_who_left_is_not_given_to_another()
    {
        studio.Say("leave", by: "Pia", agreed: true);
        var code = studio.Say("invite").Reply.Blocks.OfType<Block.Sample>().Single().Text;

        Assert.StartsWith("Welcome, Pia 2.", studio.SayFrom(900, "Pia", code).Reply.PlainText, StringComparison.Ordinal);
    }
}
