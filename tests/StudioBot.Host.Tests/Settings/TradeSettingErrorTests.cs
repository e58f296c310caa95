using System.Text.Json.Nodes;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Tests.Settings;

public sealed class TradeSettingErrorTests
{
    private const string Waste = "\"cupWasteMl\": { \"value\": 3, \"provenance\": \"common practice\" }";

    [Theory]
    // a number of the wrong kind, or outside what is sane
    [InlineData("techniques.json", "\"cupWasteMl\": { \"value\": 3", "\"cupWasteMl\": { \"value\": \"three\"",
        "cupWasteMl.value", "\"three\"", "a plain number belongs here", "3")]
    [InlineData("techniques.json", "\"cupWasteMl\": { \"value\": 3", "\"cupWasteMl\": { \"value\": 300",
        "cupWasteMl.value", "300", "it must be 0 to 50", "3")]
    [InlineData("techniques.json", "\"usualColours\": { \"value\": 4", "\"usualColours\": { \"value\": 4.5",
        "usualColours.value", "4.5", "a whole number belongs here", "4")]
    [InlineData("techniques.json", "\"low\": 2.0, \"usual\": 2.5", "\"low\": 20.5, \"usual\": 2.5",
        "techniques[0].laidMm.low", "20.5", "it must be 0.01 to 20", "2.5")]
    [InlineData("materials.json", "\"value\": 2.8", "\"value\": 2800",
        "materials[5].densityGPerMl.value", "2800", "it must be 0.5 to 8", "1.05")]
    // values that don't go together
    [InlineData("techniques.json", "\"runOff\": { \"low\": 0.1", "\"runOff\": { \"low\": 0.25",
        "techniques[0].runOff.usual", "0.2", "it must lie between low and high", "0.3")]
    [InlineData("techniques.json", "\"usual\": 2.0, \"high\": 2.5", "\"usual\": 1.8, \"high\": 2.5",
        "techniques[0].laidMm", "{ \"low\": 2.0, \"usual\": 2.5, \"high\": 3.2 }", "its layers make 2.3 together",
        "\"usual\": 2.3")]
    [InlineData("resins.json", "\"warmSafeMl\": 150", "\"warmSafeMl\": 500",
        "resins[0].cups.warmSafeMl", "500", "a warm room asks for smaller cups, not larger ones", "150")]
    [InlineData("resins.json", "\"early\": 3, \"late\": 6", "\"early\": 3, \"late\": 600",
        "resins[0].recoatOpensHours.late", "600", "it must be 0.25 to 240", "24")]
    [InlineData("resins.json", "\"early\": 12, \"late\": 24", "\"early\": 24, \"late\": 12",
        "resins[0].recoatClosesHours.early", "24", "it must not come after the late end", "12")]
    [InlineData("resins.json", "\"early\": 12, \"late\": 24", "\"early\": 5, \"late\": 24",
        "resins[0].recoatClosesHours", "{ \"early\": 5, \"late\": 24, \"provenance\": \"common practice\" }",
        "the window closes before it has opened", "\"early\": 12, \"late\": 24")]
    // names
    [InlineData("techniques.json", "{ \"value\": \"bloom\"", "{ \"value\": \"blom\"",
        "usualTechnique.value", "\"blom\"", "no entry of this file has this name", "\"bloom\"")]
    [InlineData("resins.json", "{ \"value\": \"coating resin 2:1\"", "{ \"value\": \"resin 2:1\"",
        "usualResin.value", "\"resin 2:1\"", "no entry of this file has this name", "\"coating resin 2:1\"")]
    [InlineData("materials.json", "\"name\": \"magenta\"", "\"name\": \"white\"",
        "materials[3].name", "\"white\"", "“white” is taken already", "a name of its own")]
    [InlineData("materials.json", "\"kind\": \"powder\"", "\"kind\": \"powdr\"",
        "materials[5].kind", "\"powdr\"", "there is no such choice", "\"powder\"")]
    // ratios
    [InlineData("resins.json", "\"2:1 by volume\"", "\"2;1 by volume\"", "resins[0].ratio.value", "\"2;1 by volume\"",
        "two parts split by a colon, and by what they are counted, belong here", "\"3:1 by volume\"")]
    [InlineData("resins.json", "\"100:45 by weight\"", "\"100:45\"", "resins[2].ratio.value", "\"100:45\"",
        "two parts split by a colon, and by what they are counted, belong here", "\"3:1 by volume\"")]
    // provenance
    [InlineData("techniques.json", Waste, "\"cupWasteMl\": { \"value\": 3 }",
        "cupWasteMl.provenance", "", "it is missing", "\"provenance\": \"common practice\"")]
    [InlineData("techniques.json", Waste, "\"cupWasteMl\": { \"value\": 3, \"provenance\": \"hearsay\" }",
        "cupWasteMl.provenance", "\"hearsay\"", "it is verified, common practice or memory", "\"common practice\"")]
    [InlineData("techniques.json", Waste, "\"cupWasteMl\": { \"value\": 3, \"provenance\": \"verified\" }",
        "cupWasteMl.provenance", "\"verified\"", "the source is missing",
        "\"verified: the standard or text it was read in\"")]
    // keys
    [InlineData("techniques.json", "\"sideFilmMm\": {", "\"cupWaste\": 3, \"sideFilmMm\": {",
        "cupWaste", "3", "there is no such key", "cupWasteMl")]
    [InlineData("techniques.json", Waste + ",", Waste + "," + Waste + ",", "cupWasteMl",
        "{ \"value\": 3, \"provenance\": \"common practice\" }", "the key stands twice", "one of the two")]
    [InlineData("techniques.json", Waste, "\"cupWasteMl\": 3",
        "cupWasteMl", "3", "keys and values belong here", "{ \"value\": 3, \"provenance\": \"common practice\" }")]
    [InlineData("causes.json", "\"sign\": \"thickFilm\",", "",
        "faults[0].causes[0].sign", "", "it is missing", "\"sign\": \"notRecorded\"")]
    // cautions
    [InlineData("safety.json", "\"subject\": \"torch\"", "\"subject\": \"trch\"",
        "lines[5].subject", "\"trch\"", "there is no such choice", "\"torch\"")]
    [InlineData("safety.json", "\"word\": \"Dust mask.\"", "\"word\": \"\"",
        "lines[0].word", "\"\"", "words belong here, 200 letters at most", "\"Dust mask.\"")]
    public void A_mistake_is_named_with_its_place_and_its_cure(
        string file, string text, string instead, string key, string value, string reason, string example)
    {
        using var folder = new TradeFolder();

        var error = Assert.Single(folder.With(file, text, instead).Errors());

        Assert.Equal(new TradeSettingError(file, key, value, reason, example), error);
    }

    [Fact]
    public void A_subject_without_a_caution_is_a_mistake()
    {
        using var folder = new TradeFolder();

        var errors = folder.With("safety.json", "\"subject\": \"torch\"", "\"subject\": \"waste\"").Errors();

        Assert.Equal(
            ["the subject torch has no line", "the subject waste has 2 lines"],
            errors.Select(error => error.Reason));
    }

    [Fact]
    public void A_file_that_is_not_json_is_named_with_its_line()
    {
        using var folder = new TradeFolder();

        var error = Assert.Single(folder.With("techniques.json", Waste + ",", Waste).Errors());

        Assert.Equal("techniques.json", error.File);
        Assert.Equal("line 5", error.Key);
        Assert.Equal("\"sideFilmMm\": { \"value\": 1.0, \"provenance\": \"common practice…", error.Value);
    }

    [Fact]
    public void A_missing_file_is_a_mistake()
    {
        using var folder = new TradeFolder();

        var error = Assert.Single(folder.Without("resins.json").Errors());

        Assert.Equal(("resins.json", "it is not in the settings folder"), (error.File, error.Reason));
    }

    [Fact]
    public void All_mistakes_of_all_files_are_told_at_once()
    {
        using var folder = new TradeFolder();
        folder
            .With("techniques.json", "\"cupWasteMl\": { \"value\": 3", "\"cupWasteMl\": { \"value\": -3")
            .With("techniques.json", "\"spreadMm\": { \"value\": 0.5", "\"spreadMm\": { \"valeu\": 0.5")
            .With("materials.json", "\"kind\": \"paint\"", "\"kind\": \"pint\"")
            .With("resins.json", "{", "")
            .Without("causes.json");

        Assert.Equal(
            [
                ("techniques.json", "cupWasteMl.value"),
                ("techniques.json", "spreadMm.value"),
                ("techniques.json", "spreadMm.valeu"),
                ("materials.json", "materials[0].kind"),
                ("resins.json", "line 2"),
                ("causes.json", "the file"),
            ],
            folder.Errors().Select(error => (error.File, error.Key)));
    }

    [Fact]
    public void No_value_stands_in_the_files_without_its_provenance()
    {
        foreach (var file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "config"), "*.json"))
        {
            // The service's own settings are no assumptions of the trade.
            if (Path.GetFileName(file) != "studiobot.json")
            {
                Assert.Empty(Bare(JsonNode.Parse(File.ReadAllText(file))!, sourced: false));
            }
        }
    }

    [Fact]
    public void A_mistake_reads_as_one_line() =>
        Assert.Equal(
            "techniques.json  cupWasteMl.value = 300: it must be 0 to 50. Try  3",
            new TradeSettingError("techniques.json", "cupWasteMl.value", "300", "it must be 0 to 50", "3").ToString());

    // Numbers and single values that no object above them gives a provenance for.
    private static IEnumerable<string> Bare(JsonNode node, bool sourced) => node switch
    {
        JsonObject keys => keys.SelectMany(key => Bare(key.Value!, sourced || keys.ContainsKey("provenance"))),
        JsonArray list => list.SelectMany(item => Bare(item!, sourced)),
        _ when sourced || IsName(node) => [],
        _ => [node.GetPath()],
    };

    private static bool IsName(JsonNode node) =>
        node.GetPath().EndsWith("name", StringComparison.Ordinal)
        || node.GetPath().EndsWith("kind", StringComparison.Ordinal)
        || node.Parent is JsonArray;
}
