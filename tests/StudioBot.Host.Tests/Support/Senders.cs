using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Host.Sending;
using StudioBot.Records;
using StudioBot.Records.Backups;

namespace StudioBot.Host.Tests.Support;

/// <summary>What carries the post, on a clock of ours and with always the same dice.</summary>
internal static class Senders
{
    /// <summary>Carries the post of this studio.</summary>
    public static Sender Of(StudioFile file, IWire wire, TimeProvider clock, Bell? bell = null, BackupLetter? backups = null) => new(
        file,
        wire,
        backups ?? Backups("nowhere"),
        new Pace(clock),
        new Backoff(new Random(1)),
        bell ?? new Bell(clock),
        clock,
        NullLogger<Sender>.Instance);

    /// <summary>Brings the backups of the studio in this file.</summary>
    public static BackupLetter Backups(string path) => new(BackupFolder.Of(path), NullLogger<BackupLetter>.Instance);
}
