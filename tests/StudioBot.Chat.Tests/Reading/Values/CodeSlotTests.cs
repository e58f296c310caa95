using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class CodeSlotTests
{
    [Theory]
    [InlineData("abc123", "code=ABC123")]
    [InlineData("ABC-123", "code=ABC-123")]
    [InlineData("ab", "")]
    public void An_invitation_is_read_in_either_case(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new CodeSlot(), typed));

    [Theory]
    [InlineData(11)]
    [InlineData(28)]
    public void Every_code_of_letters_is_read_whole(int length)
    {
        var random = new Random(20261129);
        for (var round = 0; round < 20_000; round++)
        {
            var code = new string(random.GetItems<char>("ABCDEFGHJKLMNPQRSTUVWXYZ", length));
            Assert.Equal($"code={code}", OneSlot.Read(new CodeSlot(), code));
        }
    }
}
