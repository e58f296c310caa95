using StudioBot.Craft.Units;

namespace StudioBot.Records.Tests.Rooms;

public sealed class RoomRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_newest_reading_counts_even_when_an_older_one_is_told_later()
    {
        var cupboard = studio.Write(session => session.Rooms.Add("cupboard"));

        Read(23, Morning);
        Read(19, Morning.AddHours(-3));

        var now = Assert.Single(studio.Read(view => view.Rooms.Current()));
        Assert.Equal((23, Morning), (now.Temperature.Celsius, now.At));

        void Read(double celsius, DateTimeOffset at) => studio.Write(session => session.Rooms.Read(
            cupboard, Temperature.FromCelsius(celsius), RelativeHumidity.FromPercent(50), at, session.Said("room")));
    }

    [Fact]
    public void A_room_that_nobody_read_has_no_air()
    {
        studio.Write(session => session.Rooms.Add("cupboard"));

        Assert.Empty(studio.Read(view => view.Rooms.Current()));
        Assert.Equal("cupboard", Assert.Single(studio.Read(view => view.Rooms.All())).Name);
    }
}
