using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Tests.Settings;

public sealed class TradeSettingsTests
{
    private static readonly string Shipped = Path.Combine(AppContext.BaseDirectory, "config");

    private static readonly TradePractice Practice = Right(Shipped);

    // Laid film, its range, run-off, its range: common practice.
    [Theory]
    [InlineData("bloom", 2.5, 2.0, 3.2, 0.20, 0.10, 0.35)]
    [InlineData("swipe", 2.6, 2.0, 3.4, 0.15, 0.05, 0.25)]
    [InlineData("ring pour", 2.8, 2.2, 3.5, 0.20, 0.10, 0.30)]
    [InlineData("dirty cup", 2.8, 2.2, 3.5, 0.25, 0.15, 0.40)]
    [InlineData("straight pour", 2.5, 2.0, 3.2, 0.20, 0.10, 0.30)]
    public void A_technique_lays_what_common_practice_lays(
        string name, double film, double thin, double thick, double runOff, double little, double much)
    {
        var technique = Practice.Techniques.Single(technique => technique.Name == name);

        Assert.Equal(film, technique.Laid.Usual.Millimetres, 9);
        Assert.Equal(thin, technique.Laid.Low.Millimetres, 9);
        Assert.Equal(thick, technique.Laid.High.Millimetres, 9);
        Assert.Equal([little, runOff, much], [technique.RunOffLow, technique.RunOff, technique.RunOffHigh]);
    }

    // Common practice.
    [Theory]
    [InlineData("bloom", LayerKind.Base, 1.5, 2.0, 2.5)]
    [InlineData("bloom", LayerKind.Colours, 0.3, 0.45, 0.8)]
    [InlineData("bloom", LayerKind.Activator, 0.03, 0.05, 0.12)]
    [InlineData("swipe", LayerKind.Base, 1.9, 1.9, 1.9)]
    [InlineData("swipe", LayerKind.Colours, 0.45, 0.45, 0.45)]
    [InlineData("swipe", LayerKind.Activator, 0.25, 0.25, 0.25)]
    [InlineData("straight pour", LayerKind.Base, 1.2, 1.2, 1.2)]
    [InlineData("straight pour", LayerKind.Colours, 1.3, 1.3, 1.3)]
    public void A_layer_has_the_film_of_common_practice(
        string name, LayerKind kind, double low, double usual, double high)
    {
        var film = Practice.Techniques.Single(technique => technique.Name == name)
            .Layers.Single(layer => layer.Kind == kind).Film;

        Assert.Equal(low, film.Low.Millimetres, 9);
        Assert.Equal(usual, film.Usual.Millimetres, 9);
        Assert.Equal(high, film.High.Millimetres, 9);
    }

    [Fact]
    public void The_defaults_of_a_pour_are_those_of_common_practice()
    {
        var pours = Practice.Pours;

        Assert.Equal("bloom", pours.UsualTechnique.Value.Name);
        Assert.Equal(3, pours.CupWaste.Value.Millilitres, 9);
        Assert.Equal(1.0, pours.SideFilm.Value.Millimetres, 9);
        Assert.Equal(new MixRatio([3, 1]), pours.MediumRatio.Value);
        Assert.Equal(new MixRatio([4, 1]), pours.WarmMediumRatio.Value);
        Assert.Equal(4, pours.PriorWeight.Value);
        Assert.Equal(0.5, pours.Spread.Value.Millimetres, 9);
        Assert.Equal(20, pours.Tools.Scoop.Value.Millilitres, 9);
    }

    [Fact]
    public void A_coating_resin_is_two_to_one_and_comes_in_small_cups_when_it_is_warm()
    {
        var resin = Practice.UsualResin;

        Assert.Equal(new MixRatio([2, 1], RatioBy.Volume), resin.Ratio.Value);

        // Common practice, all three.
        Assert.Equal(300, resin.Cups.Value.In(Temperature.FromCelsius(26)).Millilitres, 9);
        Assert.Equal(150, resin.Cups.Value.In(Temperature.FromCelsius(26.1)).Millilitres, 9);
        Assert.Equal(TimeSpan.FromHours(12), resin.RecoatCloses.Value.Early);
        Assert.Contains(Practice.Resins, other => other.Ratio.Value.Equals(new MixRatio([100, 45], RatioBy.Mass)));
    }

    [Theory]
    [InlineData("blue mica", 2.8)]               // NIOSH Pocket Guide: 2.6 to 3.2
    [InlineData("titanium white pigment", 4.2)]  // from memory
    [InlineData("neutral base", 1.05)]           // a maker's sheet: 1.04 at 46 % solids
    [InlineData("water", 0.998)]                 // water table, 20 °C
    [InlineData("resin A", 1.13)]                // from memory
    [InlineData("hardener B", 0.98)]             // from memory
    public void A_material_has_its_density(string name, double gramsPerMillilitre)
    {
        var material = Practice.Materials.Single(material => material.Name == name);

        Assert.Equal(gramsPerMillilitre, material.Density!.Value.GramsPerMillilitre, 9);
    }

    [Fact]
    public void Every_subject_has_a_caution_and_a_shorter_word_for_it()
    {
        foreach (var subject in Enum.GetValues<SafetySubject>())
        {
            var line = Practice.Safety.Of(subject);
            Assert.True(line.Word.Length < line.Line.Length, line.Line);
        }
    }

    [Fact]
    public void The_likeliest_cause_stands_first_and_fits_two_lines_of_a_phone()
    {
        foreach (var fault in Practice.Faults)
        {
            Assert.Equal(Enumerable.Range(1, fault.Causes.Count), fault.Causes.Select(cause => cause.Rank));
            Assert.All(fault.Causes, cause => Assert.InRange(cause.Why.Length, 1, 80));
            Assert.All(fault.Causes, cause => Assert.InRange(cause.Change.Length, 1, 80));
        }
    }

    [Theory]
    [InlineData("cracks")]
    [InlineData("no cells")]
    [InlineData("cells missing")]
    [InlineData("muddy")]
    [InlineData("sticky resin")]
    [InlineData("fisheyes")]
    [InlineData("slow drying")]
    [InlineData("bubbles")]
    [InlineData("cloudy")]
    [InlineData("blush")]
    [InlineData("dents")]
    [InlineData("soft")]
    [InlineData("crazing")]
    [InlineData("sinking")]
    [InlineData("too runny")]
    [InlineData("too thick")]
    [InlineData("delamination")]
    [InlineData("yellowing")]
    [InlineData("tilt")]
    [InlineData("drips")]
    public void A_fault_is_known_by_the_word_people_use(string word) =>
        Assert.Single(Practice.Faults, fault => fault.Name == word || fault.Words.Contains(word));

    private static TradePractice Right(string folder)
    {
        var reading = TradeSettings.Load(folder);
        if (reading is TradeReading.Wrong wrong)
        {
            Assert.Fail(string.Join('\n', wrong.Errors));
        }

        return ((TradeReading.Read)reading).Practice;
    }
}
