using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class CupPartsSlotTests
{
    [Theory]
    [InlineData("have 60 medium 25 thinner", "have=medium:60ml|thinner:25ml")]
    [InlineData("have 80 A", "have=A:80ml")]
    [InlineData("have 120 g resin A", "have=resin A:120g")]
    [InlineData("120+60 ml", "have=A:120ml|B:60ml")]
    public void What_is_in_the_cup_is_named_part_by_part(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new CupPartsSlot(), typed));

    [Theory]
    [InlineData("have", "“have” is followed by nothing: say what is in the cup")]
    [InlineData("60 medium 20 medium", "“20” is medium once more: one figure each")]
    public void Half_a_statement_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new CupPartsSlot(), typed));
}
