using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

public sealed class PlannedPingTests
{
    private static readonly CivilRule Nine = new(new TimeOnly(9, 0));

    public static TheoryData<string, string> Moves()
    {
        (string, string)[] pairs =
        [
            ("Europe/Berlin", "Europe/London"), ("Europe/Berlin", "Asia/Tokyo"),
            ("Europe/Berlin", "America/New_York"),
            ("America/Los_Angeles", "Asia/Tokyo"), ("America/Los_Angeles", "Pacific/Auckland"),
            ("Pacific/Pago_Pago", "Pacific/Kiritimati"), ("Asia/Kathmandu", "Asia/Kolkata"),
            ("Australia/Lord_Howe", "Australia/Sydney"), ("America/St_Johns", "America/Halifax"),
            ("Africa/Cairo", "Africa/Casablanca"), ("America/Phoenix", "America/Denver"),
            ("Etc/UTC", "Pacific/Chatham"),
        ];
        var rows = new TheoryData<string, string>();
        foreach (var (one, other) in pairs)
        {
            rows.Add(one, other);
            rows.Add(other, one);
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Moves))]
    public void A_studio_that_moves_doubles_and_loses_no_day(string from, string to)
    {
        var (old, next) = (Plans.Zone(from), Plans.Zone(to));

        // Every half hour of two days, in which Europe's clocks change.
        for (var half = 0; half < 96; half++)
        {
            var moving = Plans.Utc("2026-03-28T00:00Z").AddMinutes(30 * half);
            var said = SaidAround(moving, old, next);

            Assert.Equal(
                Enumerable.Range(0, 21).Select(day => new DateOnly(2026, 3, 20).AddDays(day)),
                said.Select(ping => ping.Slot!.Date));
            Assert.Equal(said.Count, said.Select(ping => ping.Key).Distinct().Count());
            Assert.Equal(said.Select(ping => ping.At).Order(), said.Select(ping => ping.At));
            Assert.All(
                said.Where(ping => ping.At > moving),
                ping => Assert.Equal(new TimeSpan(9, 0, 0), next.LocalOf(ping.At).TimeOfDay));
        }
    }

    [Fact]
    public void A_rules_ping_moves_with_the_studio()
    {
        var slot = new CivilSlot(Plans.Zone("Europe/Berlin"), Nine, new DateOnly(2026, 5, 10));
        var week = PlannedPing.For(slot, PingKind.Week, Plans.Studio, Plans.Chat);

        var moved = week.In(Plans.Zone("America/New_York"), Plans.Utc("2026-05-08T12:00Z"));

        Assert.Equal(Plans.Utc("2026-05-10T07:00Z"), week.At);
        Assert.Equal(Plans.Utc("2026-05-10T13:00Z"), moved.At);
        Assert.Equal(week.Key, moved.Key);
    }

    [Fact]
    public void What_has_passed_where_the_studio_moved_is_due_at_once()
    {
        var now = Plans.Utc("2026-05-10T02:00Z");
        var slot = new CivilSlot(Plans.Zone("Europe/Berlin"), Nine, new DateOnly(2026, 5, 10));

        var week = PlannedPing.For(slot, PingKind.Week, Plans.Studio, Plans.Chat);

        Assert.Equal(now, week.In(Plans.Zone("Asia/Tokyo"), now).At);
    }

    [Fact]
    public void A_duration_stays_where_it_is()
    {
        var poured = Plans.Utc("2026-03-27T18:00Z");
        var cured = Plans.Planned(PingKind.Cured, poured.AddHours(72));

        var moved = cured.In(Plans.Zone("Europe/Berlin"), poured);

        // 72 hours are 72 hours, also over the hour that Berlin skips on 29 March 2026 (IANA time zone database).
        Assert.Equal(TimeSpan.FromHours(72), moved.At - poured);
        Assert.Null(moved.Following);
    }

    // What is said, in order, by a studio that plans one after the other and moves once.
    private static List<PlannedPing> SaidAround(DateTimeOffset moving, StudioZone old, StudioZone next)
    {
        var slot = new CivilSlot(old, Nine, new DateOnly(2026, 3, 20));
        var ping = PlannedPing.For(slot, PingKind.Week, Plans.Studio, Plans.Chat);
        List<PlannedPing> said = [];
        while (ping.At <= moving)
        {
            said.Add(ping);
            ping = ping.Following!;
        }

        ping = ping.In(next, moving);
        while (said.Count < 21)
        {
            said.Add(ping);
            ping = ping.Following!.In(next, moving);   // over the date line a second day may have passed, too
        }

        return said;
    }
}
