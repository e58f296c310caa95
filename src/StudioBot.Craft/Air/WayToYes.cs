using StudioBot.Craft.Units;

namespace StudioBot.Craft.Air;

/// <summary>
/// One thing that alone turns a no into a yes; targets are rounded to the safe side, to whole degrees or percent.
/// </summary>
public abstract record WayToYes
{
    private WayToYes()
    {
    }

    /// <summary>Let the panel warm up to this before pouring.</summary>
    public sealed record WarmPanel(Temperature To) : WayToYes;

    /// <summary>Keep the room from falling below this until the resin is tack-free.</summary>
    public sealed record HoldNight(Temperature Above) : WayToYes;

    /// <summary>Heat the room, and the panel with it, to this and hold it until the resin is tack-free.</summary>
    public sealed record WarmRoom(Temperature To) : WayToYes;

    /// <summary>Dry the air to this, at the room's present temperature.</summary>
    public sealed record DryAir(RelativeHumidity To) : WayToYes;
}
