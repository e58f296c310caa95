using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class ChoiceSlotTests
{
    [Theory]
    [InlineData("metric", "units=metric")]
    [InlineData("us", "units=us")]
    [InlineData("imperial", "")]
    public void One_of_a_few_words_is_taken(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ChoiceSlot("units", "units", ["metric", "us"]), typed));

    [Theory]
    [InlineData("wet", "stage=drying")]
    public void A_word_may_stand_for_another(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new ChoiceSlot("stage", "a stage", new Dictionary<string, string> { ["wet"] = "drying" }),
            typed));

    [Theory]
    [InlineData("currency eur", "currency=eur")]
    [InlineData("eur", "")]
    public void Where_a_lead_is_needed_a_word_alone_is_none(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new ChoiceSlot("currency", "a currency", ["eur"]) { Leads = ["currency"] },
            typed));
}
