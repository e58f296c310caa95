using StudioBot.Chat.Replies;
using StudioBot.Craft.Air;

namespace StudioBot.Chat.Asking;

/// <summary>The verdict on air for resin, in the fewest words.</summary>
internal static class AirWording
{
    /// <summary>yes; yes, with care; no.</summary>
    public static string Answer(ResinAnswer answer) => answer switch
    {
        ResinAnswer.Yes => "yes",
        ResinAnswer.YesWithCaution => "yes, with care",
        _ => "no",
    };

    /// <summary>What speaks against it, or calls for care.</summary>
    public static string Reason(ResinReason reason) => reason switch
    {
        ResinReason.SurfaceNearDewPoint => "piece within 3 °C of the dew point",
        ResinReason.NightNearDewPoint => "night within 3 °C of the dew point",
        ResinReason.AirTooHumid => "more than 85 % is too damp",
        ResinReason.SlimMargin => "under 5 °C a hygrometer's error matters",
        ResinReason.SlimMarginAtNight => "at night under 5 °C to the dew point",
        ResinReason.BlushLikely => "over 70 % it may blush",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "A reason without words."),
    };

    /// <summary>What to do, as a wish.</summary>
    public static string Way(WayToYes way) => way switch
    {
        WayToYes.WarmPanel panel => $"warm the piece to {Show.Degrees(panel.To)}",
        WayToYes.HoldNight night => $"keep the night above {Show.Degrees(night.Above)}",
        WayToYes.WarmRoom room => $"room and piece at {Show.Degrees(room.To)}, day and night",
        WayToYes.DryAir air => $"dry the air to {Show.Number(air.To.Percent)} %",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "A way without words."),
    };
}
