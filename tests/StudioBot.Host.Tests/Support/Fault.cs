namespace StudioBot.Host.Tests.Support;

/// <summary>Something that comes back from the service in place of an answer.</summary>
/// <param name="Name">For the failing test.</param>
/// <param name="Answer">What comes.</param>
/// <param name="Kind">What is to be done about it.</param>
internal sealed record Fault(string Name, Answer Answer, Fault.Way Kind)
{
    /// <summary>All that are played, each as the service and what stands before it word it.</summary>
    public static IReadOnlyList<Fault> All { get; } =
    [
        new("429 with a number", Answer.TooMany(17), Way.Rest) { RestSeconds = 17 },
        new("429 without a number", Answer.No(429, "Too Many Requests"), Way.Rest) { RestSeconds = 30 },
        new("429 as a page", Answer.Raw(429, "text/html", "<h1>429</h1>"), Way.Rest) { RestSeconds = 30 },
        new("500", Answer.No(500, "Internal Server Error"), Way.Unclear),
        new("502 as a page", Answer.BadGateway, Way.Unclear),
        new("504 as a page", Answer.Raw(504, "text/html", "<h1>504 Gateway Time-out</h1>"), Way.Unclear),
        new("reset", Answer.Reset, Way.Unclear),
        new("timeout", Answer.Never, Way.Unclear) { IsHeld = true },
        new("half JSON", Answer.BadJson, Way.Unclear),
        new("empty body", Answer.Empty, Way.Unclear),
        new("page for JSON", Answer.Page, Way.Unclear),
        new("wrong length", Answer.WrongLength, Way.Unclear),
        new("slow drip", Answer.Drip, Way.Unclear) { IsHeld = true },
        new("400 can't parse", Answer.No(400, "Bad Request: can't parse entities: Unmatched end tag"), Way.Message),
        new("400 too long", Answer.No(400, "Bad Request: message is too long"), Way.Message),
        new("400 chat not found", Answer.No(400, "Bad Request: chat not found"), Way.Gone),
        new("403 blocked", Answer.Blocked, Way.Gone),
        new("403 kicked", Answer.No(403, "Forbidden: bot was kicked from the group chat"), Way.Gone),
        new("403 deactivated", Answer.No(403, "Forbidden: user is deactivated"), Way.Gone),
        new("401", Answer.Unauthorized, Way.Token),
        new("409", Answer.Conflict, Way.Other),
    ];

    /// <summary>What is to be done about it.</summary>
    public enum Way
    {
        /// <summary>Keep still for so long.</summary>
        Rest,

        /// <summary>Nobody knows whether it arrived.</summary>
        Unclear,

        /// <summary>The message as it was is not taken.</summary>
        Message,

        /// <summary>The chat is gone.</summary>
        Gone,

        /// <summary>The token is refused.</summary>
        Token,

        /// <summary>Try again later.</summary>
        Other,
    }

    public int RestSeconds { get; init; }

    /// <summary>The caller is kept waiting.</summary>
    public bool IsHeld { get; init; }

    public override string ToString() => Name;
}
