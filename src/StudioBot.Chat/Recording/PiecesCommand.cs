using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>pieces drying</c>: pieces by stage or maker.</summary>
internal sealed class PiecesCommand() : Unopened(records: false)
{
    private static readonly ChoiceSlot Stage = new("stage", "a stage", Stages);
    private static readonly PersonSlot Maker = new("member") { MayBeMe = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pieces", Room.Recording, "Pieces by stage or maker.",
        [Stage, Maker],
        ["pieces drying", "ready", "my pieces"])
    {
        AlsoSaying = ["ready", "mine", "drying", "cured"],
        Cues =
        [
            new("my pieces"),
            new("what/whats/which/show/list drying/ready/coated/cured"),
            new("pieces of/by/from {member}"),
        ],
    };

    private static IReadOnlyDictionary<string, string> Stages => new Dictionary<string, string>
    {
        ["drying"] = "drying",
        ["wet"] = "drying",
        ["ready"] = "ready",
        ["dry"] = "ready",
        ["coated"] = "coated",
        ["curing"] = "coated",
        ["cured"] = "cured",
        ["kept"] = "kept",
        ["sold"] = "sold",
        ["binned"] = "bin",
    };
}
