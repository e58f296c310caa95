using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>recipe ocean</c>: a recipe's parts.</summary>
internal sealed class RecipeShow() : Unopened(records: false)
{
    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "ocean");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "recipe", Room.House, "A recipe's parts.",
        [Recipe],
        ["recipe ocean"])
    {
        Also = ["recipes"],
    };
}
