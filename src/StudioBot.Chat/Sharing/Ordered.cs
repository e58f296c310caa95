using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Records.Stock;

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

    /// <summary>What is on its way or overdue, by the number of the material; what came since is not.</summary>
    public static IReadOnlyDictionary<long, Ordered> All(Studio studio) => studio.View.Studio.AllSet()
        .Where(one => IsOrder(one.Key))
        .Select(one => (
            Material: long.Parse(one.Key[Kept.Length..], CultureInfo.InvariantCulture), Order: Read(one.Value)))
        .Where(one => !Came(one.Material, one.Order.At, studio))
        .ToDictionary(one => one.Material, one => one.Order);

    // A delivery that is taken back did not come.
    private static bool Came(long material, DateTimeOffset since, Studio studio) =>
        studio.View.Stock.WrittenAfter(since, material)
            .Where(line => line.Reason == StockReason.Bought)
            .Sum(line => line.Fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount)) > 0;

    private static Ordered Read(string words)
    {
        var parts = words.Split(' ');
        return new Ordered(Moment(parts[0]), Moment(parts[1]));
    }

    private static DateTimeOffset Moment(string milliseconds) =>
        DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(milliseconds, CultureInfo.InvariantCulture));
}
