using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.House;

namespace StudioBot.Chat.Tests.House;

public sealed class TechniqueShowTests
{
    [Fact]
    public void A_technique_shows_its_film_its_run_off_and_where_they_come_from()
    {
        var said = Phone.Says("technique bloom");       // common practice: 2.5 mm of 2 to 3.2, 20 % of 10 to 35

        Assert.StartsWith("Bloom: 2.5 mm laid, 20 % runs off", said, StringComparison.Ordinal);
        Assert.Matches(@"Laid, thin to thick +2 to 3\.2 mm", said);
        Assert.Matches("Runs off +10 to 35 %", said);
        Assert.Matches("Base coat share +80 %", said);  // 2.0 of 2.0 + 0.45 + 0.05 mm
        Assert.Contains("Film and run-off: common practice; this studio has set none of its own.", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.4, null, "Swipe: 1.4 mm laid, 15 % runs off", "Film: this studio's own. Run-off: common practice.")]
    [InlineData(null, 0.3, "Swipe: 2.6 mm laid, 30 % runs off", "Film: common practice. Run-off: this studio's own.")]
    [InlineData(1.4, 0.3, "Swipe: 1.4 mm laid, 30 % runs off", "Film and run-off: this studio's own.")]
    public void What_the_studio_set_lies_over_common_practice(double? film, double? runOff, string headline, string grounds)
    {
        var studio = new StockedStudio();
        studio.Write(session => session.Studio.Override(
            new TechniqueOverride("swipe", film is { } laid ? Length.FromMillimetres(laid) : null, runOff)));

        var said = studio.Says("technique swipe");

        Assert.StartsWith(headline, said, StringComparison.Ordinal);
        Assert.Contains(grounds, said, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_all_are_listed_and_the_usual_one_is_said()
    {
        var said = Phone.Says("techniques");

        Assert.StartsWith("5 techniques; bloom unless you say", said, StringComparison.Ordinal);
        Assert.All(Sample.Studio.Practice.Techniques, technique => Assert.Contains(technique.Name, said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("technique")]
    [InlineData("technique bloom")]
    [InlineData("technique straight pour")]
    [InlineData("technique dirty cup")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
