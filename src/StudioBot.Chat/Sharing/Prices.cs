using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary>Sums of money against the studio's one currency.</summary>
internal static class Prices
{
    /// <summary>Why this sum can't be booked: it is in another currency than the books; none where it can.</summary>
    public static Reply? Against(Price price, string sample, Writing writing)
    {
        var own = writing.Session.Studio.Settings()!.Currency;
        return price.Currency is { } named && !named.Equals(own, StringComparison.OrdinalIgnoreCase)
            ? OwnMeasure.Trouble(
                $"“{named}” is not the books' currency: they are in {own}", "Say it like this:", sample, writing)
            : null;
    }
}
