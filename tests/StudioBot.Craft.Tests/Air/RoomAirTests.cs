using CsCheck;
using StudioBot.Craft.Air;
using StudioBot.Craft.Tests.Whole;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Air;

public sealed class RoomAirTests
{
    [Fact]
    public void Wet_air_lacks_nothing() => Assert.Equal(0, Rooms.Of(20, 100).Deficit.Kilopascals, 12);

    [Fact]
    public void A_frozen_shed_is_answered_with_a_reason() =>
        Assert.IsType<Finding<RoomAir>.None>(
            RoomAir.Read(Temperature.FromCelsius(-3), RelativeHumidity.FromPercent(60)));

    [Fact]
    public void A_heated_room_keeps_its_vapour_and_gets_drier()
    {
        var cold = Rooms.Of(15, 80);
        var warm = cold.At(Temperature.FromCelsius(22));

        Assert.Equal(cold.Vapour.Kilopascals, warm.Vapour.Kilopascals, 9);
        Assert.True(warm.Humidity.Percent < cold.Humidity.Percent);
    }

    [Fact]
    public void What_air_holds_and_lacks_makes_what_it_could_hold() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0, 100]).Sample((celsius, percent) =>
        {
            var air = Rooms.Of(celsius, percent);
            return Math.Abs(air.Vapour.Kilopascals + air.Deficit.Kilopascals - air.Saturation.Kilopascals) < 1e-9;
        });
}
