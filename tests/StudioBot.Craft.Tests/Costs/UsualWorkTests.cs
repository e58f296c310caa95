using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Tests.Costs;

public sealed class UsualWorkTests
{
    [Fact]
    public void Ten_tiles_take_less_than_ten_times_one() =>
        Assert.True(UsualWork.On(10, 1) < 10 * UsualWork.On(1, 1));

    [Fact]
    public void A_coat_of_resin_is_work() => Assert.True(UsualWork.On(1, 1) > UsualWork.On(1, 0));

    [Fact]
    public void No_piece_is_no_work_to_reckon() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => UsualWork.On(0, 0));
}
