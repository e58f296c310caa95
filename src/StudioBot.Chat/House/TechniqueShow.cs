using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;

namespace StudioBot.Chat.House;

/// <summary><c>technique bloom</c>: what a technique reckons with.</summary>
internal sealed class TechniqueShow : Ask
{
    private const int MostButtons = 4;

    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "technique", Room.House, "What a technique reckons with.",
        [RowPages.Page, Way],
        ["technique bloom", "technique"])
    {
        More = "Film and run-off, whether they are common practice or your own, and what your own pours say "
            + "since when; technique alone: all.",
        Also = ["techniques"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio) =>
        said.Has(Way) ? One(studio.Technique(said.Of(Way)), said, studio) : List(said, studio);

    private static Reply List(Phrase said, Studio studio)
    {
        var all = studio.Practice.Techniques.Select(technique => studio.Technique(technique.Name)).ToList();
        return RowPages.Of(
            $"{all.Count} techniques; {studio.Practice.Pours.UsualTechnique.Value.Name} unless you say",
            [],
            [new RowGroup("Film laid, and what runs off", [.. all.Select(technique => new Figure(
                technique.Name, $"{Show.Film(technique.Laid.Usual)}, {Show.Share(technique.RunOff)}"))])],
            [],
            said,
            [
                .. all.Take(MostButtons)
                    .Select(technique => new Button(Labels.Short(technique.Name), $"technique {technique.Name}")),
            ]);
    }

    private static Reply One(Technique technique, Phrase said, Studio studio)
    {
        List<Figure> rows =
        [
            new("Laid, thin to thick", $"{Millimetres(technique.Laid.Low)} to {Show.Film(technique.Laid.High)}"),
            new("Runs off", $"{Show.Number(technique.RunOffLow * 100, 0)} to {Show.Share(technique.RunOffHigh)}"),
            .. technique.Layers.Select(layer => new Figure(
                $"{Layer(layer.Kind)} share", Show.Share(technique.Share(layer.Kind)))),
        ];
        return RowPages.Of(
            $"{Sentences.Capital(technique.Name)}: {Show.Film(technique.Laid.Usual)} laid, "
                + $"{Show.Share(technique.RunOff)} runs off",
            [],
            [new RowGroup("", rows)],
            [
                new Block.Line(Grounds(technique, studio)),
                .. Learnt(technique, studio),
                new Block.Line("Run-off as on a 30 cm square: less on a large piece, more on a small one."),
            ],
            said,
            [
                new Button("Paint for 30 cm", $"amounts 30cm panel {technique.Name}"),
                new Button("All techniques", "technique"),
            ]);
    }

    private static string Grounds(Technique technique, Studio studio)
    {
        var own = studio.View.Studio.TechniqueOverrides().FirstOrDefault(one => one.Name == technique.Name);
        var trade = studio.Practice.Pours.Techniques.First(one => one.Value.Name == technique.Name).Provenance.Words;
        return (own?.Laid is not null, own?.RunOff is not null) switch
        {
            (true, true) => $"Film and run-off: this studio's own.{Sentences.Invented(studio)}",
            (true, false) => $"Film: this studio's own. Run-off: {trade}.{Sentences.Invented(studio)}",
            (false, true) => $"Film: {trade}. Run-off: this studio's own.{Sentences.Invented(studio)}",
            _ => $"Film and run-off: {trade}; this studio has set none of its own.",
        };
    }

    // What amounts reckon with since the first own pour was measured.
    private static IEnumerable<Block> Learnt(Technique technique, Studio studio)
    {
        if (StudioFilms.Of(technique, new SurfaceSet(RunOff.Reference), null, studio) is { } learnt)
        {
            yield return new Block.Line(
                $"Since {Show.Day(studio.Zone.DateOf(learnt.Since))}, {learnt.Pours}: "
                + $"{Show.Film(learnt.Estimate.Mean)} a face with run-off, give or take "
                + $"{Show.Film(learnt.Estimate.NextPourSd)}; that is what amounts go by.");
        }
    }

    private static string Layer(LayerKind kind) => kind switch
    {
        LayerKind.Base => "Base coat",
        LayerKind.Colours => "Colours",
        _ => "Activator",
    };

    private static string Millimetres(Craft.Units.Length film) => Show.Number(film.Millimetres, 2);
}
