using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class UnitSlotTests
{
    [Theory]
    [InlineData("to ml", "to=ml")]
    [InlineData("in inches", "to=in")]
    [InlineData("into fl oz", "to=fl oz")]
    [InlineData("tsp", "to=tsp")]
    [InlineData("to zorks", "“zorks” is no unit")]
    public void The_wanted_unit_stands_behind_to_or_in(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new UnitSlot(), typed));
}
