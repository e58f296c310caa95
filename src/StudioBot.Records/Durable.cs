using System.Runtime.InteropServices;
using System.Text;

namespace StudioBot.Records;

/// <summary>What must outlive a power cut: bytes in their file, and names in their folder.</summary>
internal static class Durable
{
    private const int LookOnly = 0;   // O_RDONLY

    /// <summary>The bytes of this file are on the disk when it returns.</summary>
    /// <exception cref="IOException">The disk says no.</exception>
    public static void Flush(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    /// <summary>What was made, renamed or deleted in this folder is on the disk when it returns.</summary>
    /// <remarks>Windows keeps names with its own log and has no call for it.</remarks>
    /// <exception cref="IOException">The disk says no.</exception>
    public static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Open(Encoding.UTF8.GetBytes(folder + '\0'), LookOnly);
        if (handle < 0)
        {
            throw Refused(folder);
        }

        try
        {
            if (Sync(handle) != 0)
            {
                throw Refused(folder);
            }
        }
        finally
        {
            _ = Close(handle);
        }
    }

    private static IOException Refused(string folder) =>
        new($"{Marshal.GetLastPInvokeErrorMessage()}: {folder}");

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static extern int Sync(int handle);

    [DllImport("libc", EntryPoint = "close", SetLastError = true)]
    private static extern int Close(int handle);
}
