using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.House;

namespace StudioBot.Chat.House;

/// <summary><c>technique swipe film 1.4mm</c>: a technique's film in this studio.</summary>
internal sealed class TechniqueSet : Act
{
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom")
    {
        IsRequired = true,
    };

    private static readonly FilmSlot Film = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "technique", Room.House, "A technique's film in this studio.",
        [Film, Way],
        ["technique swipe film 1.4mm"])
    {
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (name, film) = (said.Of(Way), said.Of(Film));
        var before = writing.Studio.Technique(name).Laid.Usual;
        var kept = writing.Session.Studio.TechniqueOverrides().FirstOrDefault(one => one.Name == name);
        var trade = writing.Practice.Techniques.First(one => one.Name == name).Laid.Usual;
        writing.Session.Studio.Override(new TechniqueOverride(name, film, kept?.RunOff), writing.Act);
        return new Reply(
            [
                new Block.Headline($"{Sentences.Capital(name)}: {Show.Film(film)} film from now on."),
                new Block.Line($"It was {Show.Film(before)}{(kept?.Laid is null ? ", common practice" : "")}."),
                .. kept?.Laid is null
                    ? Array.Empty<Block>()
                    : [new Block.Line($"Common practice: {Show.Film(trade)}.")],
            ],
            [new Button("What it needs", $"amounts 30cm panel {name}")]);
    }
}
