using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

public sealed class ShelfRoomTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_new_label_puts_a_shelf_up()
    {
        Assert.StartsWith("Shelf D is put up in cupboard.", _studio.Hear("shelf D in cupboard"), StringComparison.Ordinal);
        Assert.Contains(_studio.Look(view => view.Rooms.Shelves()), shelf => shelf is { Label: "D", Room: "cupboard" });
    }

    [Fact]
    public void A_shelf_moves_with_what_lies_on_it()
    {
        Assert.Equal(
            "Shelf B3 stands in cupboard now.\nOn it: 17 and 18, with that room's air from now on.",
            _studio.Hear("shelf B3 in cupboard"));
        Assert.Contains(_studio.Look(view => view.Rooms.Shelves()), shelf => shelf is { Label: "B3", Room: "cupboard" });
    }

    [Fact]
    public void Where_it_stands_already_nothing_is_recorded() =>
        Assert.StartsWith("C1 stands in cupboard already. Nothing recorded.", _studio.Hear("shelf C1 in cupboard"), StringComparison.Ordinal);
}
