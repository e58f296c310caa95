using CsCheck;
using StudioBot.Craft.Stock;

namespace StudioBot.Craft.Tests.Stock;

public sealed class DrawTests
{
    private static readonly OpenLot Old = new("M-6", 100);
    private static readonly OpenLot Stopped = new("M-7", 500, IsStopped: true);
    private static readonly OpenLot New = new("M-8", 300);

    [Fact]
    public void The_oldest_lot_goes_first_and_a_stopped_one_never()
    {
        var taken = Assert.IsType<Draw.Taken>(Draw.From([Old, Stopped, New], 150));

        Assert.Equal([new LotPortion(Old, 100), new LotPortion(New, 50)], taken.FromLots);
    }

    [Fact]
    public void Too_little_takes_nothing_and_says_how_much_is_missing() =>
        Assert.Equal(new Draw.Short(50), Draw.From([Old, Stopped, New], 450));

    [Fact]
    public void What_is_taken_and_what_is_missing_make_what_was_asked() =>
        Gen.Select(Gen.Long[0, 1000].Array[0, 6], Gen.Long[1, 4000]).Sample((left, amount) =>
        {
            OpenLot[] lots = [.. left.Select((one, i) => new OpenLot($"L-{i}", one))];
            return Draw.From(lots, amount) switch
            {
                Draw.Taken taken => taken.FromLots.Sum(portion => portion.Amount) == amount
                    && taken.FromLots.All(portion => portion.Amount > 0 && portion.Amount <= portion.Lot.Left),
                Draw.Short missing => left.Sum() + missing.Missing == amount,
                _ => false,
            };
        });

    [Fact]
    public void Nothing_is_not_drawn() => Assert.Throws<ArgumentOutOfRangeException>(() => Draw.From([Old], 0));
}
