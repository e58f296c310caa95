using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>coat 18 failed fisheyes</c>: a coat that went wrong.</summary>
internal sealed class CoatFailed : Act
{
    private const int MostLines = 3;

    private static readonly ChoiceSlot Failed = new("", "failed", ["failed", "fail"]) { IsRequired = true };
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };
    private static readonly TextSlot Fault = new("what is wrong", "fisheyes") { After = Failed };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "coat", Room.Recording, "A coat that went wrong.",
        [Pieces, Failed, Fault, RecordSlots.Day],
        ["coat 18 failed fisheyes"]);

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => [new("failed", "yes")];

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if (TalkedOf.Against(pieces, "no coat on it that could fail", null, Stage.Coated, Stage.Cured) is { } trouble)
        {
            return trouble;
        }

        var why = said.Has(Fault) ? said.Of(Fault) : null;
        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Failed(why), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        var coats = CoatReckoning
            .Of([.. pieces.Select(piece => piece.Number)], writing.Session, writing.Practice)
            .ToDictionary(coat => coat.Piece);
        var next = pieces.GroupBy(piece => Next(coats.GetValueOrDefault(piece.Number), writing)).ToList();
        return new Reply(
            [
                new Block.Headline($"Coat on {TalkedOf.Words(pieces)} failed{(why is null ? "" : $": {Short(why)}")}."),
                .. next.Take(MostLines).Select(alike => new Block.Line(
                    (next.Count > 1 ? TalkedOf.Words([.. alike]) + ": " : "") + alike.Key)),
                Cautions.InAWord(writing.Studio, SafetySubject.Sanding),
            ],
            Why(why, writing));
    }

    // Half-cured dust can make allergic, and half-cured resin clogs the paper: full cure comes first.
    private static string Next(CoatReckoning? coat, Writing writing)
    {
        var full = coat is null ? null : CoatHours.Full(coat);
        return (coat, full) switch
        {
            (null, _) => "When it was laid is not on record: let it cure by its sheet, then sand, wipe and coat again.",
            (_, { } moment) when moment <= writing.Now => "It has cured: sand it dull, wipe it and coat again.",
            (_, { } moment) => $"Let it cure until {Show.Date(writing.Turn.Zone.DateOf(moment), writing.Turn)}, "
                + "then sand it dull, wipe it and coat again.",
            _ => "It is too cold to cure: warm it first; then sand it dull, wipe it and coat again.",
        };
    }

    // What is asked for only where it would be answered.
    private static List<Button> Why(string? why, Writing writing)
    {
        if (why is null)
        {
            return [];
        }

        var words = why.ToLowerInvariant();
        return writing.Studio.Practice.Faults
            .Where(fault => words.Contains(fault.Name, StringComparison.Ordinal)
                || fault.Words.Any(word => words.Contains(word, StringComparison.Ordinal)))
            .Take(1)
            .Select(fault => new Button("Why", $"why {fault.Name}"))
            .ToList();
    }

    private static string Short(string why) => Labels.Cut(why, 61);
}
