namespace StudioBot.Records;

/// <summary>The mark beside a studio's file that one program has it; it goes with the process, however that ends.
/// </summary>
internal sealed class FileClaim : IDisposable
{
    // EWOULDBLOCK on Linux and on macOS, a sharing violation on Windows.
    private static readonly int[] Taken = [11, 35, unchecked((int)0x80070020)];

    private readonly FileStream mark;

    private FileClaim(FileStream mark) => this.mark = mark;

    /// <summary>Claims the studio in this file.</summary>
    /// <exception cref="StudioInUseException">Somebody else has it.</exception>
    public static FileClaim On(string path)
    {
        try
        {
            return new FileClaim(new FileStream(
                path + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (IOException trouble) when (Taken.Contains(trouble.HResult))
        {
            throw new StudioInUseException(path, trouble);
        }
    }

    /// <summary>Lets the studio go. The mark's file stays: taking it away could take another's.</summary>
    public void Dispose() => mark.Dispose();
}
