using StudioBot.Chat.Reading;

namespace StudioBot.Chat;

/// <summary>All there is to say about one form of a command: help, menu, reader and tests take it from here.</summary>
/// <param name="Word">The command word.</param>
/// <param name="Room">Where help lists it.</param>
/// <param name="Says">One line of help.</param>
/// <param name="Takes">What it takes, in the order in which a doubtful word is offered to them.</param>
/// <param name="Examples">Messages that work; the first is the one that errors and menus show.</param>
public sealed record CommandSheet(
    string Word,
    Room Room,
    string Says,
    IReadOnlyList<Slot> Takes,
    IReadOnlyList<string> Examples)
{
    /// <summary>What there is to know beyond the one line, in whole sentences; help shows it where there is room, the
    /// page of messages always. Empty where the line says it all.</summary>
    public string More { get; init; } = "";

    /// <summary>Other words that mean the same: inflections, everyday names, two-word ones too.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];

    /// <summary>Those other names that say something beside the command: ready says which pieces.</summary>
    public IReadOnlyList<string> AlsoSaying { get; init; } = [];

    /// <summary>Whether words that mean something elsewhere may stand in a remark, as in a reminder.</summary>
    public bool RemarksFreely { get; init; }

    /// <summary>Whether behind a piece's number it is meant only where nothing but figures follows: else those words
    /// are a note.</summary>
    public bool IsElseNoted { get; init; }

    /// <summary>Sentences that mean it without its word.</summary>
    public IReadOnlyList<Cue> Cues { get; init; } = [];

    /// <summary>Whether only stewards may.</summary>
    public bool StewardsOnly { get; init; }

    /// <summary>Whether nobody can tell it for another: money is told by who paid it.</summary>
    public bool IsOwnOnly { get; init; }

    /// <summary>Whether it stays out of groups.</summary>
    public bool PrivateOnly { get; init; }
}
