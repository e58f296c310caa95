using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Host.Logging;

namespace StudioBot.Host.Tests.Logging;

public sealed class LogDigestTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_a_log_of_several_studios_each_entry_is_kept_without_its_folder(bool isJson)
    {
        using var written = new StringWriter { NewLine = "\n" };
        using var log = new LineLog(written, new FakeTimeProvider(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero)), isJson, "/srv/Amberwick");
        log.CreateLogger("StudioBot.Host.Ticks.BackupRound").LogInformation(Events.BackupProven, "Amberwick is safe.");

        Assert.Contains("/srv/Amberwick", written.ToString(), StringComparison.Ordinal);
        Assert.Equal(
            ["2026-11-25T09:00:00.000Z Information StudioBot.Host.Ticks.BackupRound 500"],
            LogDigest.Of(written.ToString().Split('\n')));
    }
}
