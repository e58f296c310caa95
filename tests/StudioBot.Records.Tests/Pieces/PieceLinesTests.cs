using Microsoft.Data.Sqlite;
using StudioBot.Craft.Air;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Sample;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Pieces;

public sealed class PieceLinesTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;

    public PieceLinesTests() => mira = studio.File.Write(session =>
    {
        SampleStudio.WriteInto(session);
        return session.Members.All()[0];
    });

    public static TheoryData<PieceEvent, Stage> Events => new()
    {
        { new PieceEvent.Mixed(Volume.FromMillilitres(318)), Stage.Drying },
        { new PieceEvent.Left(Volume.FromMillilitres(40)), Stage.Drying },
        { new PieceEvent.Caught(Volume.FromMillilitres(55)), Stage.Drying },
        { new PieceEvent.Shelved("C4"), Stage.Drying },
        { new PieceEvent.Shelved(null), Stage.Drying },
        { new PieceEvent.Weighed(Mass.FromGrams(318.4)), Stage.Drying },
        { new PieceEvent.Bare(Mass.FromGrams(262.1)), Stage.Drying },
        { new PieceEvent.Dry(), Stage.Ready },
        { new PieceEvent.NotYet(Morning.AddDays(2)), Stage.Drying },
        { new PieceEvent.NotYet(null), Stage.Drying },
        { new PieceEvent.Failed("fisheyes"), Stage.Coated },
        { new PieceEvent.Sanded(), Stage.Ready },
        { new PieceEvent.Cured(), Stage.Cured },
        { new PieceEvent.Staged(Stage.Cured), Stage.Cured },
        { new PieceEvent.Note("big cells lower left"), Stage.Drying },
        { new PieceEvent.Photo("AgACAgQ", "wet"), Stage.Drying },
        { new PieceEvent.Due(Morning.AddDays(30), new Money(32000), "for a customer"), Stage.Drying },
        { new PieceEvent.Kept(), Stage.Kept },
        { new PieceEvent.Sold(new Money(8500), 40, "gallery"), Stage.Sold },
        { new PieceEvent.Bin("cracks"), Stage.Bin },
    };

    public void Dispose() => studio.Dispose();

    [Theory]
    [MemberData(nameof(Events))]
    public void What_happened_comes_back_and_says_how_far_the_piece_is(PieceEvent what, Stage stage)
    {
        var act = Happens(17, what);

        var (line, piece) = studio.File.Read(view => (view.Pieces.Lines(17)[^1], view.Pieces.Find(17)!));
        Assert.Equal(new PieceLine(17, act, Morning, mira.Id, what), line);
        Assert.Equal(stage, piece.Stage);
    }

    [Fact]
    public void A_coat_comes_back_as_it_was_taken()
    {
        var coat = new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60))
        {
            Ratio = new MixRatio([2, 1]),
            Film = Length.FromCentimetres(0.18),
            Air = new RoomAir(Temperature.FromCelsius(21), RelativeHumidity.FromPercent(50)),
            LotIds = [17, 19],
        };
        Happens(14, new PieceEvent.Coated(coat));

        var kept = Assert.IsType<PieceEvent.Coated>(studio.File.Read(view => view.Pieces.Lines(14))[^1].What).Coat;
        Assert.Equal(coat with { LotIds = kept.LotIds }, kept);
        Assert.Equal(coat.LotIds, kept.LotIds);
        Assert.Equal(Stage.Coated, studio.File.Read(view => view.Pieces.Find(14))!.Stage);
    }

    [Fact]
    public void It_lies_where_it_was_laid_last()
    {
        Happens(17, new PieceEvent.Shelved("C4"));
        Assert.Equal("C4", studio.File.Read(view => view.Pieces.Find(17))!.Shelf);

        Happens(17, new PieceEvent.Shelved(null));
        Assert.Null(studio.File.Read(view => view.Pieces.Find(17))!.Shelf);
    }

    [Fact]
    public void It_goes_back_stage_by_stage_to_what_it_was_before()
    {
        Happens(17, new PieceEvent.Dry());
        Happens(17, new PieceEvent.Coated(new Coat(Volume.FromMillilitres(2), Volume.FromMillilitres(1))));

        Assert.Equal([Stage.Ready, Stage.Drying, null], Enumerable.Range(0, 3).Select(_ =>
            studio.File.Write(session => session.Pieces.GoBack(17, session.Said("stage", mira)))));
        Assert.Equal(Stage.Drying, studio.File.Read(view => view.Pieces.Find(17))!.Stage);
    }

    [Fact]
    public void Nothing_happens_to_a_piece_that_is_not_there_and_none_is_poured_twice()
    {
        Assert.Throws<ArgumentException>(() => Happens(99, new PieceEvent.Dry()));
        Assert.Throws<ArgumentException>(() => Happens(17, new PieceEvent.Poured(Stage.Drying, null)));
        Assert.Throws<SqliteException>(() => Happens(17, new PieceEvent.Weighed(Mass.FromGrams(0))));
    }

    [Fact]
    public void A_number_is_given_before_the_pour_and_belongs_to_it()
    {
        var tile = new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30));
        var number = studio.File.Write(session =>
            session.Pieces.Reserve(tile, Length.FromCentimetres(2), session.Said("number", mira)));
        Assert.Equal(
            new ReservedNumber(22, tile, Length.FromCentimetres(2)),
            studio.File.Read(view => view.Pieces.FindReserved(number)));

        var pour = new NewPiece(tile, "bloom", mira, Morning) { Poured = Volume.FromMillilitres(318) };
        int Poured(int? under) => studio.File.Write(session =>
            session.Pieces.Pour(pour with { Number = under }, session.Said("pour", mira)));
        Assert.Equal(23, Poured(null));   // 22 is taken
        Assert.Equal(22, Poured(22));

        Assert.Null(studio.File.Read(view => view.Pieces.FindReserved(22)));
        Assert.Throws<ArgumentException>(() => Poured(22));
        Assert.Equal(
            new PieceEvent.Poured(Stage.Drying, Volume.FromMillilitres(318)),
            studio.File.Read(view => view.Pieces.Lines(22))[0].What);
    }

    private long Happens(int number, PieceEvent what) => studio.File.Write(session =>
    {
        var act = session.Said("said", mira);
        session.Pieces.Book(number, what, act);
        return act.Id;
    });
}
