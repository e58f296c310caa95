using StudioBot.Records.Materials;

namespace StudioBot.Chat.Pings;

/// <summary>When a lot goes old: its shelf life after it was opened, or after it came while nobody opened it.</summary>
/// <param name="SoonAt">From when on it goes old soon.</param>
/// <param name="OldAt">When it is old.</param>
internal sealed record ShelfAge(DateTimeOffset SoonAt, DateTimeOffset OldAt)
{
    // A week is time to use it up; of what keeps for days, half of them (common practice).
    private static readonly TimeSpan Warned = TimeSpan.FromDays(7);

    /// <summary>Of this lot; none where nobody set how long it keeps.</summary>
    public static ShelfAge? Of(Lot lot, Material material)
    {
        if (material.ShelfLife is not { } life)
        {
            return null;
        }

        var old = (lot.OpenedAt ?? lot.BoughtAt) + life;
        return new ShelfAge(old - (life / 2 < Warned ? life / 2 : Warned), old);
    }
}
