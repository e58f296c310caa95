using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>note 17 big cells lower left</c>: words kept with a piece, and the photo they came with.</summary>
internal sealed class NoteCommand : Act
{
    // So much of a note is said back; all of it is kept.
    private const int MostShown = 160;

    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly TextSlot Text = new("a note", "big cells lower left")
    {
        After = Piece,
        IsRequired = true,
        KeepsQuestions = true,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "note", Room.Recording, "Words kept with a piece.",
        [Piece, Text],
        ["note 17 big cells lower left"])
    {
        More = "As a caption, the photo too.",
        Also = ["notes", "noted"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var piece = TalkedOf.Pieces(said.Of(Piece), writing)[0];
        var words = said.Of(Text);
        var photo = writing.Turn.Photo;
        var before = Coat(piece.Number, words, photo, writing);
        writing.Session.Pieces.Book(
            piece.Number,
            photo is null ? new PieceEvent.Note(words) : new PieceEvent.Photo(photo, words),
            writing.Act);
        writing.Touch(piece.Number);
        List<Block> blocks =
        [
            new Block.Headline(photo is null ? $"Kept with {piece.Number}." : $"Photo kept with {piece.Number}."),
            new Block.Line(Labels.Cut(words, MostShown + 1)),
        ];
        if (before is not null && Coat(piece.Number, words, photo, writing) is { } coat)
        {
            blocks.AddRange(TackyTold.Of(before.Pace, coat, writing));
        }

        if (photo is null && CurePaces.IsNotTacky(words) && Live(piece.Number, writing) is not null)
        {
            blocks.Add(new Block.Line(
                $"When it is, send {piece.Number} tacky: its resin's hours learn from both looks."));
        }

        if (photo is null && IsTackyWithMore(words))
        {
            blocks.Add(new Block.Line($"Words only; to learn from it: {piece.Number} tacky 14:20"));
        }

        if (photo is null && StudioGels.IsGelled(words) && Gel(piece.Number, writing) is { } gel)
        {
            blocks.AddRange(GelTold.Of(gel, writing.Studio));
        }

        return new Reply(blocks, []);
    }

    private static StudioGels.Gel? Gel(int piece, Writing writing) =>
        Live(piece, writing) is { } coat ? StudioGels.OfCoat(coat, writing.HappenedAt) : null;

    // The coat that may still go further; none where there is none, or it failed or is sanded.
    private static CoatReckoning? Live(int piece, Writing writing) =>
        CoatReckoning.Of(piece, writing.Session, writing.Practice) is { HasFailed: false, IsSanded: false } coat
            ? coat
            : null;

    // As in “tacky 14:20”, which one would think was learnt from.
    private static bool IsTackyWithMore(string words) =>
        words.StartsWith("tacky ", StringComparison.OrdinalIgnoreCase) && words.Any(char.IsAsciiDigit);

    // The coat of which this note may say that it is tacky; none where it says something else.
    private static CoatReckoning? Coat(int piece, string words, string? photo, Writing writing) =>
        photo is null && CurePaces.IsTacky(words) ? Live(piece, writing) : null;
}
