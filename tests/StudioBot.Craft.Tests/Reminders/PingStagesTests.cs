using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>Each question by itself; what they make together is in <see cref="PingVerdictTests"/>.</summary>
public sealed class PingStagesTests
{
    private static readonly DuePing Plain = new(
        Plans.Planned(PingKind.Ready, Plans.At("5 10:00")), Plans.At("5 10:00"),
        new SubjectState.Standing(Plans.At("5 10:00")), Plans.Wishes);

    [Fact]
    public void Nothing_speaks_against_a_plain_ping_on_time() =>
        Assert.All(PingStages.InOrder, stage => Assert.Null(stage(Plain)));

    [Fact]
    public void Each_stage_minds_its_own_trouble()
    {
        var troubled = new DuePing[]
        {
            Plain with { State = new SubjectState.Over(WhyUnwanted.Sold) },
            Plain with { Wishes = Plans.Wishes with { Muted = new HashSet<PingKind> { PingKind.Ready } } },
            Plain with { Planned = Plain.Planned with { Slot = Yesterday } },
            Plain with { Wishes = Plans.Wishes with { NotBefore = Plans.At("5 11:00") } },
            Plain with { State = new SubjectState.Standing(Plans.At("5 11:00")) },
            Plain with { Wishes = new PingWishes(Siesta) },
            Plain with { State = new SubjectState.Window(Plans.At("5 09:00"), Plans.At("5 10:00")) },
            Plain with { Planned = Plain.Planned with { At = Plans.At("5 09:50") } },
        };

        Assert.Equal(PingStages.InOrder.Count, troubled.Length);
        for (var own = 0; own < troubled.Length; own++)
        {
            var speaking = PingStages.InOrder.Select((stage, at) => (at, Verdict: stage(troubled[own])))
                .Where(stage => stage.Verdict is not null).Select(stage => stage.at);
            Assert.Equal([own], speaking);
        }
    }

    private static QuietHours Siesta => new(new TimeOnly(9, 0), new TimeOnly(11, 0), Plans.Plain);

    private static CivilSlot Yesterday =>
        new(Plans.Plain, new CivilRule(new TimeOnly(9, 0)), new DateOnly(2026, 5, 4));
}
