using Microsoft.Data.Sqlite;
using StudioBot.Records.Members;

namespace StudioBot.Records.Tests;

public sealed class StudioFileTests : IDisposable
{
    private const int ReadOnlyDatabase = 8;   // SQLITE_READONLY, from memory
    private const int Constraint = 19;        // SQLITE_CONSTRAINT, from memory

    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private static readonly TimeSpan LongEnough = TimeSpan.FromSeconds(20);

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_was_written_is_there_after_a_restart()
    {
        studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

        studio.Reopen();

        Assert.Equal(["Mira"], Names(studio.File));
    }

    [Fact]
    public void What_throws_has_written_nothing()
    {
        Assert.Throws<FormatException>(() => studio.File.Write(session =>
        {
            session.Members.Add("Mira", Role.Steward, Morning);
            Refuse();
        }));

        Assert.Empty(Names(studio.File));
        studio.File.Write(session => session.Members.Add("Pia", Role.Member, Morning));
        Assert.Equal(["Pia"], Names(studio.File));
    }

    [Fact]
    public void Who_only_looks_cannot_write()
    {
        var refused = Assert.Throws<SqliteException>(
            () => studio.File.Read(view => view.Members.Add("Mira", Role.Steward, Morning)));

        Assert.Equal(ReadOnlyDatabase, refused.SqliteErrorCode);
        Assert.Empty(Names(studio.File));
    }

    [Fact]
    public void Nor_in_a_studio_that_is_only_in_memory_where_writing_goes_on_afterwards()
    {
        using var inMemory = StudioFile.OpenInMemory();

        var refused = Assert.Throws<SqliteException>(
            () => inMemory.Read(view => view.Members.Add("Mira", Role.Steward, Morning)));
        inMemory.Write(session => session.Members.Add("Pia", Role.Member, Morning));

        Assert.Equal(ReadOnlyDatabase, refused.SqliteErrorCode);
        Assert.Equal(["Pia"], Names(inMemory));
    }

    [Fact]
    public void A_reader_does_not_wait_for_a_writer_and_sees_the_last_commit()
    {
        studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

        List<string> meanwhile = [];
        var answered = studio.File.Write(session =>
        {
            session.Members.Add("Pia", Role.Member, Morning);
            var reader = new Thread(() => meanwhile = Names(studio.File));
            reader.Start();
            return reader.Join(LongEnough);
        });

        Assert.True(answered);
        Assert.Equal(["Mira"], meanwhile);
        Assert.Equal(["Mira", "Pia"], Names(studio.File));
    }

    [Fact]
    public void A_view_stays_at_one_moment_while_others_write()
    {
        var (before, after) = studio.File.Read(view =>
        {
            var first = view.Members.All().Count;
            var writer = new Thread(() =>
                studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning)));
            writer.Start();
            Assert.True(writer.Join(LongEnough));
            return (first, view.Members.All().Count);
        });

        Assert.Equal((0, 0), (before, after));
        Assert.Equal(["Mira"], Names(studio.File));
    }

    [Fact]
    public void Eight_who_write_at_once_all_get_their_turn()
    {
        var writers = Enumerable.Range(0, 8).Select(writer => new Thread(() =>
        {
            for (var turn = 0; turn < 25; turn++)
            {
                studio.File.Write(session => session.Members.Add($"{writer}-{turn}", Role.Member, Morning));
            }
        })).ToList();

        writers.ForEach(writer => writer.Start());
        Assert.All(writers, writer => Assert.True(writer.Join(LongEnough)));

        Assert.Equal(200, Names(studio.File).Distinct().Count());
    }

    [Fact]
    public void A_session_is_not_opened_within_a_session()
    {
        Assert.Throws<InvalidOperationException>(() => studio.File.Write(_ => studio.File.Write(_ => { })));
        Assert.Throws<InvalidOperationException>(() => studio.File.Write(_ => Names(studio.File)));
    }

    [Fact]
    public void A_second_program_is_refused_until_the_first_has_closed()
    {
        var refused = Assert.Throws<StudioInUseException>(() => StudioFile.Open(studio.Path));

        Assert.Equal(studio.Path, refused.Path);
        studio.Reopen();
        Assert.Empty(Names(studio.File));
    }

    [Fact]
    public void A_glance_sees_what_the_first_program_committed_and_cannot_write()
    {
        studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

        Assert.Equal(1, StudioFile.Glance(studio.Path, view => view.Members.All().Count));
        Assert.Throws<SqliteException>(
            () => StudioFile.Glance(studio.Path, view => view.Members.Add("Pia", Role.Member, Morning)));
        Assert.Equal(["Mira"], Names(studio.File));
    }

    [Fact]
    public void A_glance_makes_no_file()
    {
        var missing = studio.Path + ".other";

        Assert.Throws<UnreadableStudioException>(() => StudioFile.Glance(missing, view => view.Members.All()));
        Assert.False(File.Exists(missing));
    }

    [Fact]
    public void Studios_side_by_side_know_nothing_of_each_other()
    {
        using var other = new TemporaryStudio();

        studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

        Assert.Empty(Names(other.File));
    }

    [Fact]
    public void An_account_of_nobody_is_refused_by_the_file_itself()
    {
        var refused = Assert.Throws<SqliteException>(
            () => studio.File.Write(session => session.Members.AddAccount(7001, 99, Morning)));

        Assert.Equal(Constraint, refused.SqliteErrorCode);
    }

    private static List<string> Names(StudioFile file) =>
        file.Read(view => view.Members.All().Select(member => member.Name).ToList());

    private static void Refuse() => throw new FormatException("a slip");
}
