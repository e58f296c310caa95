using StudioBot.Chat.Coats;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Coats;

public sealed class CoatReckoningTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_piece_that_was_never_coated_on_record_has_none() => Assert.Null(Of(17));

    // Warmer is faster (Arrhenius): the window closes sooner than in the air it was laid in.
    [Fact]
    public void A_new_reading_of_its_room_moves_the_window()
    {
        _studio.Say("coat 14 180 ml 2:1");
        var before = Of(14)!.KnownWindow!;
        _studio.Now = _studio.Now.AddHours(1);
        _studio.Say("room studio 25C 40%");

        Assert.True(Of(14)!.KnownWindow!.ClosesFrom < before.ClosesFrom);
    }

    [Fact]
    public void Another_rooms_air_does_not_concern_it_until_it_lies_there()
    {
        _studio.Say("coat 14 180 ml 2:1");
        var before = Of(14)!.KnownWindow!;
        _studio.Now = _studio.Now.AddHours(1);
        _studio.Say("room cupboard 27C 40%");
        Assert.Equal(before, Of(14)!.KnownWindow);

        _studio.Now = _studio.Now.AddHours(1);
        _studio.Say("shelf 14 C1");
        Assert.True(Of(14)!.KnownWindow!.ClosesFrom < before.ClosesFrom);
    }

    [Fact]
    public void It_counts_the_coats_and_knows_what_came_after()
    {
        _studio.Say("coat 14 180 ml 2:1");
        _studio.Now = _studio.Now.AddHours(8);
        _studio.Say("coat 14 170 ml 2:1");
        Assert.Equal((2, false, false), (Of(14)!.Number, Of(14)!.HasFailed, Of(14)!.IsSanded));

        _studio.Now = _studio.Now.AddHours(1);
        _studio.Say("coat 14 failed fisheyes");
        Assert.True(Of(14)!.HasFailed);

        _studio.Now = _studio.Now.AddDays(9);
        _studio.Say("sand 14");
        Assert.True(Of(14)!.IsSanded);
    }

    [Fact]
    public void Too_cold_a_film_has_no_window()
    {
        _studio.Say("coat 14 180 ml 2:1 9C 60%");

        Assert.Null(Of(14)!.KnownWindow);
        Assert.Null(Of(14)!.KnownCure);
    }

    private CoatReckoning? Of(int piece) =>
        _studio.Look(view => CoatReckoning.Of(piece, view, Sample.Studio.Practice));
}
