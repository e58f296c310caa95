using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Members;

public sealed class ClaimCodeTests : IDisposable
{
    private readonly TemporaryStudio studio = new();

    public ClaimCodeTests() => Put("first-code", 15);

    public void Dispose() => studio.Dispose();

    [Fact]
    public void It_is_good_once()
    {
        Assert.True(Try("first-code", 14));
        Assert.False(Try("first-code", 14));
    }

    [Theory]
    [InlineData("first-code", 15)]   // too late
    [InlineData("other-code", 1)]
    public void It_is_good_for_nothing(string code, double minutes)
    {
        Assert.False(Try(code, minutes));
    }

    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]   // five tries, and that was the last of them
    public void After_five_wrong_tries_it_is_void(int wrong, bool good)
    {
        for (var tried = 0; tried < wrong; tried++)
        {
            Assert.False(Try("guess", 1));
        }

        Assert.Equal(good, Try("first-code", 1));
    }

    [Fact]
    public void A_new_code_takes_the_place_of_the_old_one()
    {
        Put("second-code", 30);

        Assert.False(Try("first-code", 1));
        Assert.True(Try("second-code", 20));
    }

    [Fact]
    public void Where_none_was_put_none_is_good()
    {
        using var other = new TemporaryStudio();

        Assert.False(other.File.Write(session => session.Claim.Try("first-code", Morning)));
    }

    private void Put(string code, double minutes) =>
        studio.File.Write(session => session.Claim.Put(code, Morning.AddMinutes(minutes)));

    private bool Try(string code, double minutes) =>
        studio.File.Write(session => session.Claim.Try(code, Morning.AddMinutes(minutes)));
}
