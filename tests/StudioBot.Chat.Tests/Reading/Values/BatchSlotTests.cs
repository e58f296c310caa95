using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class BatchSlotTests
{
    [Theory]
    [InlineData("batch 12", "batch=12")]
    [InlineData("b12", "batch=12")]
    [InlineData("batch 999", "“999” is no batch here")]
    public void A_batch_is_known_by_its_number(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new BatchSlot(), typed));

    [Theory]
    [InlineData("12", "batch=12")]
    public void Behind_its_own_word_the_number_will_do(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new BatchSlot { TakesBare = true }, typed));
}
