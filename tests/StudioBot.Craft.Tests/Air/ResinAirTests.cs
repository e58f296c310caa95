using CsCheck;
using StudioBot.Craft.Air;
using StudioBot.Craft.Tests.Whole;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Air;

/// <summary>The 3 °C and 85 % are quoted by coating texts with ISO 8502-4's method.</summary>
public sealed class ResinAirTests
{
    [Fact]
    public void A_cold_panel_in_a_fair_room_only_needs_to_warm_up()
    {
        // FAO-56 equation 11 inverted: the dew point of 19 °C and 72 % is 13.84 °C; 3 °C more, in whole degrees: 17.
        var verdict = ResinAir.Judge(Rooms.Of(19, 72), Celsius(15), night: Celsius(18));

        Assert.Equal(ResinAnswer.No, verdict.Answer);
        Assert.Equal([ResinReason.SurfaceNearDewPoint, ResinReason.SlimMarginAtNight, ResinReason.BlushLikely],
            verdict.Reasons);
        Assert.Equal(new WayToYes.WarmPanel(Celsius(17)), verdict.Cheapest);
    }

    [Fact]
    public void A_room_fine_by_day_and_cold_by_night_needs_its_night_held()
    {
        // 21 °C and 65 %: dew point 14.17; at 16 °C only 1.83 is left.
        var verdict = ResinAir.Judge(Rooms.Of(21, 65), night: Celsius(16));

        Assert.Equal([ResinReason.NightNearDewPoint], verdict.Reasons);
        Assert.Equal(new WayToYes.HoldNight(Celsius(18)), verdict.Cheapest);
        Assert.Contains(verdict.Ways, way => way is WayToYes.DryAir);
    }

    [Fact]
    public void An_unmeasured_surface_is_a_degree_below_the_air_and_says_so()
    {
        var verdict = ResinAir.Judge(Rooms.Of(21, 55));

        Assert.Equal(20, verdict.Now!.Surface.Celsius, 9);
        Assert.True(verdict.Now.Assumed);
        Assert.Equal(17, verdict.AtNight!.Surface.Celsius, 9);
        Assert.True(verdict.AtNight.Assumed);
    }

    [Fact]
    public void A_margin_of_four_degrees_is_yes_with_caution()
    {
        // Dew point 14.17 at 21 °C and 65 %.
        var verdict = ResinAir.Judge(Rooms.Of(21, 65), Celsius(18.2), Celsius(20));

        Assert.Equal(ResinAnswer.YesWithCaution, verdict.Answer);
        Assert.Equal([ResinReason.SlimMargin], verdict.Reasons);
        Assert.Null(verdict.Cheapest);
    }

    [Fact]
    public void A_warm_surface_does_not_help_against_humid_air() =>
        Assert.Equal(ResinReason.AirTooHumid, ResinAir.Judge(Rooms.Of(20, 88), Celsius(26), Celsius(26)).Reasons[0]);

    [Fact]
    public void The_sheet_may_ask_for_drier_air() =>
        Assert.Equal(ResinAnswer.No, ResinAir.Judge(
            Rooms.Of(24, 60), Celsius(24), Celsius(24), RelativeHumidity.FromPercent(50)).Answer);

    [Fact]
    public void Wholly_dry_air_is_fine() => Assert.Equal(ResinAnswer.Yes, ResinAir.Judge(Rooms.Of(20, 0)).Answer);

    [Fact]
    public void Each_way_to_yes_leads_there() =>
        Gen.Select(Gen.Double[12, 30], Gen.Double[30, 100], Gen.Double[0, 8], Gen.Double[0, 8])
            .Sample((celsius, percent, colder, night) =>
            {
                var air = Rooms.Of(celsius, percent);
                var (surface, coldest) = (Celsius(celsius - colder), Celsius(celsius - night));
                return ResinAir.Judge(air, surface, coldest).Ways.All(way => Taken(way, air, surface, coldest).Answer
                    != ResinAnswer.No);
            });

    [Fact]
    public void Damper_air_never_turns_a_no_into_a_yes() =>
        Gen.Select(Gen.Double[10, 30], Gen.Double[1, 100], Gen.Double[1, 100]).Sample((celsius, one, other) =>
            ResinAir.Judge(Rooms.Of(celsius, Math.Max(one, other))).Answer
            >= ResinAir.Judge(Rooms.Of(celsius, Math.Min(one, other))).Answer);

    private static ResinAir Taken(WayToYes way, RoomAir air, Temperature surface, Temperature night) => way switch
    {
        WayToYes.WarmPanel panel => ResinAir.Judge(air, panel.To, night),
        WayToYes.HoldNight hold => ResinAir.Judge(air, surface, hold.Above),
        WayToYes.WarmRoom room => ResinAir.Judge(air.At(room.To), null, room.To),
        WayToYes.DryAir dry => ResinAir.Judge(new RoomAir(air.Temperature, dry.To), surface, night),
        _ => throw new InvalidOperationException($"No such way: {way}."),
    };

    private static Temperature Celsius(double value) => Temperature.FromCelsius(value);
}
