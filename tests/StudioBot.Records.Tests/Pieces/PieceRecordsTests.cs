using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;

namespace StudioBot.Records.Tests.Pieces;

public sealed class PieceRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();
    private readonly Member mira;

    public PieceRecordsTests() =>
        mira = studio.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

    public static TheoryData<Surface> Surfaces => new(
        new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(40)),
        new Surface.Panel(Length.FromInches(12), Length.FromInches(16)),
        new Surface.Disc(Length.FromCentimetres(40)),
        new Surface.Disc(Length.FromInches(10.5)),
        new Surface.Oval(Length.FromCentimetres(20), Length.FromCentimetres(30)),
        new Surface.Hexagon(Length.FromCentimetres(15)));

    public void Dispose() => studio.Dispose();

    [Theory]
    [MemberData(nameof(Surfaces))]
    public void A_surface_comes_back_as_it_was_poured(Surface surface)
    {
        var piece = Poured(new NewPiece(surface, "bloom", mira, Morning) { Depth = Length.FromCentimetres(2) });

        // Sizes are booked to the micrometre: far below one part in ten thousand of a face.
        Assert.IsType(surface.GetType(), piece.Surface);
        Assert.Equal(1, piece.Surface.Face / surface.Face, 4);
        Assert.Equal(1, piece.Surface.Rim / surface.Rim, 4);
        Assert.Equal(20, piece.Depth!.Value.Millimetres, 6);
    }

    [Theory]
    [InlineData(Stage.Drying)]
    [InlineData(Stage.Ready)]
    [InlineData(Stage.Coated)]
    [InlineData(Stage.Cured)]
    [InlineData(Stage.Kept)]
    [InlineData(Stage.Sold)]
    [InlineData(Stage.Bin)]
    public void A_piece_may_be_at_any_stage(Stage stage)
    {
        var piece = Poured(new NewPiece(Coaster, "swipe", mira, Morning) { Stage = stage });

        Assert.Equal(stage, piece.Stage);
    }

    [Fact]
    public void What_nobody_said_stays_unsaid()
    {
        var piece = Poured(new NewPiece(Coaster, "swipe", mira, Morning));

        Assert.Equal(
            (null, null, null, null, null),
            (piece.Depth, piece.Colours, piece.Recipe, piece.Batch, piece.Shelf));
        Assert.Empty(piece.Parts);
    }

    [Fact]
    public void Every_piece_gets_the_next_number()
    {
        var numbers = studio.Write(session => new[] { 1, 2, 3 }
            .Select(_ => session.Pieces.Pour(
                new NewPiece(Coaster, "swipe", mira, Morning), session.Said("pour", mira))).ToList());

        Assert.Equal([1, 2, 3], numbers);
    }

    [Fact]
    public void A_number_that_was_never_given_finds_nothing()
    {
        Assert.Null(studio.Read(view => view.Pieces.Find(55555)));
    }

    [Fact]
    public void It_is_not_poured_from_a_batch_that_was_never_mixed()
    {
        Assert.Throws<ArgumentException>(
            () => Poured(new NewPiece(Coaster, "bloom", mira, Morning) { Batch = 999999 }));
        Assert.Empty(studio.Read(view => view.Pieces.All()));
    }

    private static Surface.Disc Coaster => new(Length.FromCentimetres(10));

    private Piece Poured(NewPiece piece)
    {
        var number = studio.Write(session => session.Pieces.Pour(piece, session.Said("pour", mira)));
        return studio.Read(view => view.Pieces.Find(number)) ?? throw new InvalidOperationException("It is not there.");
    }
}
