namespace StudioBot.Records.Members;

/// <summary>What somebody is to the studio when they say something.</summary>
public enum Standing
{
    /// <summary>Nobody of the studio.</summary>
    Stranger,

    /// <summary>Belonged to it, and left.</summary>
    Left,

    /// <summary>Writes in the name of the group, so that nobody knows who it is.</summary>
    Anonymous,

    /// <summary>Writes in the name of a channel, so that nobody knows who it is.</summary>
    Channel,

    /// <summary>May ask and record.</summary>
    Member,

    /// <summary>Keeps house as well.</summary>
    Steward,
}
