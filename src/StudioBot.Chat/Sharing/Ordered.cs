using System.Globalization;

namespace StudioBot.Chat.Sharing;

/// <summary>A material is on its way: until it comes, or is long overdue, nobody is told that it is low.</summary>
/// <param name="At">When somebody said so.</param>
/// <param name="Until">Until when it is believed.</param>
internal sealed record Ordered(DateTimeOffset At, DateTimeOffset Until)
{
    private const string Kept = "ordered ";

    /// <summary>Under which name it is kept among the studio's settings.</summary>
    public static string NameOf(long material) => string.Create(CultureInfo.InvariantCulture, $"{Kept}{material}");

    /// <summary>Whether a setting of this name is an order, and nothing the studio has set.</summary>
    public static bool IsOrder(string name) => name.StartsWith(Kept, StringComparison.Ordinal);

    /// <summary>As it is kept.</summary>
    public string Words => string.Create(
        CultureInfo.InvariantCulture, $"{At.ToUnixTimeMilliseconds()} {Until.ToUnixTimeMilliseconds()}");

    /// <summary>Whether it is still believed at this moment.</summary>
    public bool Stands(DateTimeOffset now) => now < Until;

    /// <summary>What is on its way or overdue of this material; none where nothing was ordered, or it came.</summary>
    public static Ordered? Of(long material, Studio studio)
    {
        if (studio.View.Studio.Setting(NameOf(material)) is not { } words)
        {
            return null;
        }

        var order = Read(words);
        return studio.View.Stock.HasCome(material, order.At) ? null : order;
    }

    private static Ordered Read(string words)
    {
        var parts = words.Split(' ');
        return new Ordered(Moment(parts[0]), Moment(parts[1]));
    }

    private static DateTimeOffset Moment(string milliseconds) =>
        DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(milliseconds, CultureInfo.InvariantCulture));
}
