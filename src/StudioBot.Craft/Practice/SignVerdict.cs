namespace StudioBot.Craft.Practice;

/// <summary>What a studio's records say of a cause.</summary>
public enum SignVerdict
{
    /// <summary>They speak for it.</summary>
    For,

    /// <summary>They say nothing either way.</summary>
    Silent,

    /// <summary>They speak against it.</summary>
    Against,
}
