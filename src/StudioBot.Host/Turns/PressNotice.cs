namespace StudioBot.Host.Turns;

/// <summary>What the service wants to hear of a press.</summary>
/// <param name="Press">Its id.</param>
/// <param name="Notice">Why it does not count, shown for a moment; none where it does.</param>
internal sealed record PressNotice(string Press, string? Notice);
