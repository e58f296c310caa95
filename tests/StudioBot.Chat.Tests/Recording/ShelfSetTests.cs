using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

public sealed class ShelfSetTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_piece_lies_where_it_was_laid_and_has_that_rooms_air()
    {
        Assert.Equal("19 lies on C3, cupboard.\nAir there: 23 °C, 45 %.", _studio.Hear("shelf 19 C3"));
        Assert.Equal("C3", ShelfOf(19));
    }

    [Fact]
    public void A_shelf_that_is_not_there_is_put_up_by_a_button()
    {
        var asked = _studio.Say("shelf 19 D1").Reply;

        Assert.StartsWith("There is no shelf D1 here. Nothing recorded.", asked.PlainText, StringComparison.Ordinal);
        Assert.Equal("B4", ShelfOf(19));
        var button = Assert.Single(asked.Buttons);
        Assert.InRange(button.Label.Length, 1, 20);
        Assert.True(_studio.Say(button.Line, agreed: true).Recorded);
        Assert.Equal("D1", ShelfOf(19));
    }

    [Fact]
    public void A_shelf_may_be_called_B()
    {
        _studio.Say("shelf B in cupboard");

        Assert.StartsWith("19 lies on B, cupboard.", _studio.Hear("shelf 19 B"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_sold_lies_on_no_shelf_here() =>
        Assert.StartsWith("1 is sold: it lies on no shelf here. Nothing recorded.", _studio.Hear("shelf 1 B3"), StringComparison.Ordinal);

    private string? ShelfOf(int number) => _studio.Look(view => view.Pieces.Find(number)!.Shelf);
}
