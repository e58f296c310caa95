using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class FaultSlotTests
{
    [Theory]
    [InlineData("cracks", "topic=cracks")]
    [InlineData("it is cracking", "topic=cracks")]
    [InlineData("cracked", "topic=cracks")]
    public void A_fault_is_known_in_its_inflections(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new FaultSlot(), typed));
}
