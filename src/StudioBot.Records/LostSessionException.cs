namespace StudioBot.Records;

/// <summary>The database has taken back the whole session, as where a statement that writes is broken off: nothing of
/// it stands, and nothing more can be written in it.</summary>
public sealed class LostSessionException : Exception
{
    internal LostSessionException(Exception why)
        : base("The database has taken back the whole session.", why)
    {
    }
}
