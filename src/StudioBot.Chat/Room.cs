namespace StudioBot.Chat;

/// <summary>The four rooms in which help lists the commands.</summary>
public enum Room
{
    /// <summary>Questions; nothing is written.</summary>
    Asking,

    /// <summary>What happened to pieces.</summary>
    Recording,

    /// <summary>Stock and money.</summary>
    Sharing,

    /// <summary>Members and settings.</summary>
    House,
}
