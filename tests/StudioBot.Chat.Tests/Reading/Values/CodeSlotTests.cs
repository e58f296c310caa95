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
}
