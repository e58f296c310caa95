namespace StudioBot.Records.Members;

/// <summary>What somebody may do in the studio.</summary>
public enum Role
{
    /// <summary>May ask and record.</summary>
    Member,

    /// <summary>Keeps house as well.</summary>
    Steward,
}
