namespace StudioBot.Craft.Air;

/// <summary>What speaks against resin in this air, or calls for care.</summary>
public enum ResinReason
{
    /// <summary>The surface is less than 3 °C above the dew point: no.</summary>
    SurfaceNearDewPoint,

    /// <summary>
    /// The night would bring the surface within 3 °C of the dew point while the resin is still tacky: no.
    /// </summary>
    NightNearDewPoint,

    /// <summary>More humid than the sheet, or 85 %, allows: no.</summary>
    AirTooHumid,

    /// <summary>The surface is 3 to 5 °C above the dew point: a hygrometer's error matters.</summary>
    SlimMargin,

    /// <summary>At night the surface will be 3 to 5 °C above the dew point.</summary>
    SlimMarginAtNight,

    /// <summary>Above 70 %: cool damp air feeds amine blush.</summary>
    BlushLikely,
}
