namespace StudioBot.Chat;

/// <summary>
/// A form whose books are not open yet: it is read, and answered with how it was read and that nothing was
/// recorded. It stands in no help and in no menu.
/// </summary>
public abstract class Unopened(bool records) : Command
{
    /// <inheritdoc/>
    public sealed override bool Records => records;
}
