using Microsoft.Data.Sqlite;
using StudioBot.Host.Verbs;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Verbs;

/// <summary>What one who may do everything on the machine never meets, and so no test by the program can count on.</summary>
public sealed class OpeningTroubleTests
{
    private const string Path = "/srv/studio/studio.db";

    private static readonly string MakeItTheirs = $"User {Environment.UserName} can't write /srv/studio. Make it theirs and writable:  "
        + $"sudo chown -R {Environment.UserName} /srv/studio && chmod -R u+rwX /srv/studio";

    // The database's own numbers: no permission, only to be read, not to be opened, no authorisation.
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(14)]
    [InlineData(23)]
    public void A_file_that_may_not_be_written_is_told_with_the_command_that_helps(int number) => Assert.Equal(
        new OpeningTrouble(ExitCode.CannotWrite, MakeItTheirs),
        OpeningTrouble.Of(new UnreadableStudioException(new SqliteException("no", number)), Path));

    [Fact]
    public void So_is_a_folder_that_may_not_be_written() => Assert.Equal(
        new OpeningTrouble(ExitCode.CannotWrite, MakeItTheirs), OpeningTrouble.Of(new UnauthorizedAccessException("no"), Path));

    [Fact]
    public void A_disk_that_says_no_is_told_in_its_own_words() => Assert.Equal(
        new OpeningTrouble(
            ExitCode.CannotWrite,
            "Can't write /srv/studio/studio.db: Read-only file system. Put that right, or name another folder with --data."),
        OpeningTrouble.Of(new IOException("Read-only file system"), Path));

    [Theory]
    [InlineData(8, "The studio's file may only be read.")]
    [InlineData(10, "The disk fails.")]
    [InlineData(13, "The disk is full.")]
    public void A_disk_that_takes_nothing_more_is_told(int number, string why) => Assert.Equal(
        new OpeningTrouble(ExitCode.CannotWrite, $"Can't write /srv/studio/studio.db: {why} Put that right, or name another folder with --data."),
        OpeningTrouble.Of(new UnwritableStudioException(new SqliteException("no", number)), Path));

    [Theory]
    [InlineData(10, "The disk is full, or fails.")]
    [InlineData(13, "The disk is full.")]
    public void So_is_one_that_takes_nothing_from_the_start(int number, string why) => Assert.Equal(
        new OpeningTrouble(
            ExitCode.CannotWrite, $"Can't write /srv/studio/studio.db: {why} Put that right, or name another folder with --data."),
        OpeningTrouble.Of(new UnreadableStudioException(new SqliteException("no", number)), Path));

    [Fact]
    public void A_mistake_of_ours_is_no_trouble_of_the_machine() =>
        Assert.Null(OpeningTrouble.Of(new InvalidOperationException("ours"), Path));
}
