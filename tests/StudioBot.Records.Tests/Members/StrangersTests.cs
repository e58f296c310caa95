using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Members;

public sealed class StrangersTests : IDisposable
{
    private const long Somebody = 901;

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData(0.001, false)]
    [InlineData(23.999, false)]   // not by the calendar's day
    [InlineData(24, true)]
    public void They_hear_it_once_in_24_hours_also_over_a_restart(double hours, bool again)
    {
        Assert.True(MayHear(Somebody, 0));
        studio.Reopen();

        Assert.Equal(again, MayHear(Somebody, hours));
    }

    [Fact]
    public void Each_hears_it_themselves()
    {
        Assert.True(MayHear(Somebody, 0));
        Assert.True(MayHear(Somebody + 1, 0));
    }

    [Fact]
    public void Five_wrong_codes_in_a_day_are_the_most_and_a_restart_forgives_none()
    {
        for (var tries = 0; tries < Strangers.MostWrongCodes; tries++)
        {
            Assert.True(MayTry(tries));
            studio.File.Write(session => session.Strangers.WasWrong(Somebody, Morning.AddHours(tries)));
            studio.Reopen();
        }

        Assert.False(MayTry(5));
        Assert.False(MayTry(23.9));
        Assert.True(MayTry(24));   // a day after the first of them
    }

    [Fact]
    public void Who_was_quiet_for_a_day_is_forgotten()
    {
        MayHear(Somebody, 0);
        studio.File.Write(session => session.Strangers.WasWrong(Somebody, Morning.AddHours(3)));

        Assert.Equal(0, Prune(26.9));
        Assert.Equal(1, Prune(27));
    }

    private bool MayHear(long account, double hours) =>
        studio.File.Write(session => session.Strangers.MayHear(account, Morning.AddHours(hours)));

    private bool MayTry(double hours) =>
        studio.File.Write(session => session.Strangers.MayTry(Somebody, Morning.AddHours(hours)));

    private int Prune(double hours) =>
        studio.File.Write(session => session.Strangers.Prune(Morning.AddHours(hours)));
}
