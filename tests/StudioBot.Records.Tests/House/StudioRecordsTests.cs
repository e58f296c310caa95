using StudioBot.Craft.Units;
using StudioBot.Records.House;

namespace StudioBot.Records.Tests.House;

public sealed class StudioRecordsTests : IDisposable
{
    private static readonly StudioSettings Founded =
        new("Lantern Yard", "Europe/Vienna", "EUR", UnitSystem.Metric, Volume.FromMillilitres(20));

    private readonly StudioFile studio = StudioFile.OpenInMemory();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_studio_that_was_not_founded_has_set_nothing()
    {
        Assert.Null(studio.Read(view => view.Studio.Settings()));
    }

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    [InlineData(UnitSystem.Imperial)]
    public void What_is_changed_stands_in_place_of_what_was(UnitSystem units)
    {
        var changed = Founded with { Units = units, Scoop = Volume.FromMillilitres(25) };

        studio.Write(session => session.Studio.Change(Founded));
        studio.Write(session => session.Studio.Change(changed));

        Assert.Equal(changed, studio.Read(view => view.Studio.Settings()));
    }

    [Fact]
    public void Everything_else_that_is_set_is_listed_by_name()
    {
        Assert.Empty(studio.Read(view => view.Studio.AllSet()));
        studio.Write(session =>
        {
            session.Studio.Set("week_day", "sunday", session.Said("studio"));
            session.Studio.Set("quiet", "21:30-07:00", session.Said("studio"));
            session.Studio.Set("wall", "on", session.Said("studio"));
            session.Studio.Set("wall", null, session.Said("studio"));
        });

        Assert.Equal(
            [KeyValuePair.Create("quiet", "21:30-07:00"), KeyValuePair.Create("week_day", "sunday")],
            studio.Read(view => view.Studio.AllSet()));
    }

    [Fact]
    public void What_was_found_for_a_technique_may_leave_the_rest_to_the_trade()
    {
        studio.Write(session => session.Studio.Override(new TechniqueOverride("bloom", null, 0.3)));
        studio.Write(session =>
            session.Studio.Override(new TechniqueOverride("Bloom", Length.FromMillimetres(2.8), null)));

        var found = Assert.Single(studio.Read(view => view.Studio.TechniqueOverrides()));
        Assert.Equal(("bloom", null), (found.Name, found.RunOff));
        Assert.Equal(2.8, found.Laid!.Value.Millimetres, 9);
    }
}
