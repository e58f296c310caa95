using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Recording;

/// <summary><c>number 30cm panel</c>: a number to write under a piece before the gloves go on.</summary>
internal sealed class NumberCommand : Act
{
    // More than this nobody lays out at once.
    private const int MostPieces = 60;

    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "number", Room.Recording, "A number to write under a piece before the gloves go on.",
        [Size, Way, RecordSlots.For],
        ["number 30cm panel"]);

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(Size) && said.Of(Size).Count > MostPieces
        ? new Misread(Figures.Of(said.Of(Size).Count), "pieces are more than one pour", Sheet.Examples[0])
        : null;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var surfaces = said.Of(Size);
        var numbers = surfaces.Groups.SelectMany(group => Enumerable.Repeat(group.Surface, group.Count))
            .Select(surface => writing.Session.Pieces.Reserve(surface, surfaces.Depth, writing.Act))
            .ToList();
        var pour = $"pour {numbers[0]} {(said.Has(Way) ? said.Of(Way) : "bloom")}";
        return new Reply(
            [
                new Block.Headline(numbers.Count == 1
                    ? $"Write {numbers[0]} under it."
                    : $"Write {numbers[0]} to {numbers[^1]} under them."),
                new Block.Line($"{Show.Surfaces(surfaces)}, not poured yet. When it is, with its colours:"),
                new Block.Sample(pour + " 6 colours"),
            ],
            said.Has(Way) && numbers.Count == 1 ? [new Button($"Poured {numbers[0]}", pour)] : []);
    }
}
