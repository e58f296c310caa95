using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Workshops;

namespace StudioBot.Records.Tests.Workshops;

public sealed class WorkshopRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();
    private readonly Member mira;
    private readonly Material white;
    private readonly Material cup;

    public WorkshopRecordsTests() => (mira, white, cup) = studio.Write(session => (
        session.Members.Add("Mira", Role.Steward, Now),
        session.Materials.Add(new NewMaterial("white", MaterialForm.Liquid)),
        session.Materials.Add(new NewMaterial("cup", MaterialForm.Counted))));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_comes_back_with_what_it_takes()
    {
        var (act, _) = Reserved(Now.AddDays(3));

        var workshop = Assert.Single(Coming(Now));
        Assert.Equal((act.Id, Now.AddDays(3), 8, "8 people"), (workshop.ActId, workshop.StartsAt, workshop.People, workshop.Words));
        Assert.Equal(Ml(250), workshop.Takes[white.Id]);
        Assert.Equal(new Amount.ByCount(16), workshop.Takes[cup.Id]);
        Assert.Equal([white.Id, cup.Id], studio.Read(view => view.Workshops.TakenBy(act)));
    }

    [Fact]
    public void The_next_stands_first_and_one_that_began_is_gone()
    {
        var (_, later) = Reserved(Now.AddDays(9));
        var (_, next) = Reserved(Now.AddDays(3));

        Assert.Equal([next.Id, later.Id], Coming(Now).Select(one => one.Id));
        Assert.Equal([later.Id], Coming(Now.AddDays(3)).Select(one => one.Id));
    }

    [Fact]
    public void Those_that_started_in_a_time_tell_what_they_were_to_take()
    {
        Reserved(Now.AddDays(9));
        var (undone, _) = Reserved(Now.AddDays(4));
        Reserved(Now.AddDays(3));
        studio.Write(session => Assert.IsType<Undone.Done>(session.Undo.Take(undone.Id, new NewAct("undo", mira, "undo", Now))));

        Assert.Equal(
            [(white.Id, Now.AddDays(3), Ml(250)), (cup.Id, Now.AddDays(3), new Amount.ByCount(16))],
            studio.Read(view => view.Workshops.Between(Now, Now.AddDays(8))).Select(one => (one.MaterialId, one.StartsAt, one.Amount)));
        Assert.Empty(studio.Read(view => view.Workshops.Between(Now.AddDays(3), Now.AddDays(8))));
    }

    [Fact]
    public void Undo_cancels_it()
    {
        var (act, _) = Reserved(Now.AddDays(3));

        studio.Write(session => Assert.IsType<Undone.Done>(session.Undo.Take(act.Id, new NewAct("undo", mira, "undo", Now))));

        Assert.Empty(Coming(Now));
    }

    [Fact]
    public void Nobody_and_nothing_are_no_workshop()
    {
        Assert.Throws<SqliteException>(() => Reserved(Now, people: 0));
        Assert.Throws<SqliteException>(() => Reserved(Now, amount: 0));
        Assert.Throws<ArgumentException>(() => studio.Write(session => session.Workshops.Add(
            Now, 1, "x", [new WorkshopPart(white, new Amount.ByCount(3))], session.Acts.Begin(new NewAct("reserve", mira, "x", Now)))));
    }

    private (Act Act, Workshop Workshop) Reserved(DateTimeOffset at, int people = 8, double amount = 250) => studio.Write(session =>
    {
        var act = session.Acts.Begin(new NewAct("reserve", mira, "8 people", Now));
        return (act, session.Workshops.Add(
            at, people, "8 people", [new WorkshopPart(white, Ml(amount)), new WorkshopPart(cup, new Amount.ByCount(16))], act));
    });

    private IReadOnlyList<Workshop> Coming(DateTimeOffset now) => studio.Read(view => view.Workshops.After(now));

    private static Amount.ByVolume Ml(double millilitres) => new Amount.ByVolume(Volume.FromMillilitres(millilitres));
}
