using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class NumberSlotTests
{
    [Theory]
    [InlineData("120 rpm", "rpm=120")]
    [InlineData("120", "“120” has no unit")]
    [InlineData("9000 rpm", "“9000 rpm” is more than can be meant")]
    public void A_figure_has_its_unit(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new NumberSlot(Measure.Turns, "rpm", "a speed", "120 rpm") { Unit = "rpm", Most = 5000 },
            typed));

    [Theory]
    [InlineData("density 0.45", "density=0.45")]
    [InlineData("density is 0.45", "density=0.45")]
    [InlineData("0.45", "“0.45” has no unit")]
    public void Behind_its_lead_a_bare_figure_will_do(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(
            new NumberSlot(Measure.Turns, "density", "a density", "density 0.45")
            {
                Leads = ["density"],
                TakesBare = true,
            },
            typed));
}
