using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class PiecesSlotTests
{
    [Theory]
    [InlineData("17", "piece=17")]
    [InlineData("#17", "piece=17")]
    [InlineData("piece 17", "piece=17")]
    [InlineData("17 18", "pieces=17|18")]
    [InlineData("17, 18 and 21", "pieces=17|18|21")]
    [InlineData("17,18,21", "pieces=17|18|21")]
    public void Pieces_are_known_by_their_numbers(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PiecesSlot { Most = 30 }, typed));

    [Theory]
    [InlineData("999", "“999” is no piece here: there is none of that number")]
    [InlineData("0", "“0” is no piece: they count from 1")]
    [InlineData("17.5", "“17.5” is no piece: they have whole numbers")]
    public void What_is_no_piece_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PiecesSlot { Most = 30 }, typed));

    [Theory]
    [InlineData("17 2 coats", "“2” has no place here")]
    public void A_number_with_a_noun_of_its_own_is_no_piece(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PiecesSlot { Most = 30 }, typed));

    [Theory]
    [InlineData("17 85", "“85” has no place here")]
    [InlineData("17 18 85", "“85” has no place here")]
    public void The_last_number_may_be_a_price(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PiecesSlot { Most = 10, LeavesLast = true }, typed));
}
