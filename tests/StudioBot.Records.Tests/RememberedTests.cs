using Microsoft.Data.Sqlite;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests;

public sealed class RememberedTests : IDisposable
{
    private const string Setting = "week day";

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    // Its table has no row numbers, and of those the database tells nothing.
    [Fact]
    public void What_was_set_and_taken_back_is_known_in_every_later_session()
    {
        Assert.Null(Set());

        var act = studio.File.Write(session =>
        {
            var said = session.Said("studio", session.Members.Add("Mira", Role.Steward, Morning));
            session.Studio.Set(Setting, "sunday", said);
            return said;
        });
        Assert.Equal("sunday", Set());

        studio.File.Write(session => session.TakeBack(act));
        Assert.Null(Set());
    }

    [Fact]
    public void What_went_with_its_session_is_not_remembered()
    {
        Assert.Empty(Rooms());

        Assert.Throws<DivideByZeroException>(() => studio.File.Write(session =>
        {
            session.Rooms.Add("attic");
            Assert.Single(session.Rooms.All());
            throw new DivideByZeroException();
        }));

        Assert.Empty(Rooms());
    }

    [Fact]
    public void What_went_with_an_attempt_is_not_remembered()
    {
        var (within, behind) = studio.File.Write(session =>
        {
            var named = session.Attempt(
                () =>
                {
                    session.Rooms.Add("attic");
                    return session.Rooms.All().Count;
                },
                _ => false);
            return (named, session.Rooms.All().Count);
        });

        Assert.Equal((1, 0), (within, behind));
    }

    [Fact]
    public void What_another_program_wrote_into_the_file_is_seen_by_the_next_session()
    {
        Assert.Empty(Rooms());

        using (var other = new SqliteConnection($"Data Source={studio.Path};Pooling=False"))
        {
            other.Open();
            using var naming = other.CreateCommand();
            naming.CommandText = "insert into room (name) values ('attic')";
            naming.ExecuteNonQuery();
        }

        Assert.Equal(["attic"], Rooms());
    }

    [Fact]
    public void Whose_account_it_is_follows_who_joins_and_who_leaves()
    {
        Assert.Null(Speaker());

        var mira = studio.File.Write(session =>
        {
            var joined = session.Members.Add("Mira", Role.Steward, Morning);
            session.Members.AddAccount(7, joined.Id, Morning);
            return joined;
        });
        Assert.Equal("Mira", Speaker());

        studio.File.Write(session => session.Members.Leave(mira.Id, session.Said("leave", mira)));
        Assert.Null(Speaker());
    }

    private string? Set() => studio.File.Write(session => session.Studio.Setting(Setting));

    private string? Speaker() => studio.File.Write(session => session.Members.ByAccount(7)?.Name);

    private List<string> Rooms() =>
        studio.File.Write(session => session.Rooms.All().Select(room => room.Name).ToList());
}
