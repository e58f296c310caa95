using System.Runtime.InteropServices;

namespace StudioBot.Host.Settings;

/// <summary>What a studio keeps is nobody else's on the machine.</summary>
internal static class OwnersOnly
{
    private const int GroupAndOthers = 0b000_111_111;

    /// <summary>From now on every file and folder that this program makes is its user's alone: the studio, its log, its
    /// backups, what is exported. What is there already stays as it is.</summary>
    /// <remarks>Windows goes by the folder's rules: a person's own there.</remarks>
    public static void FromNowOn()
    {
        if (!OperatingSystem.IsWindows())
        {
            _ = Umask(GroupAndOthers);
        }
    }

    [DllImport("libc", EntryPoint = "umask")]
    private static extern int Umask(int mask);
}
