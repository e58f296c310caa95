using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Workshops;

namespace StudioBot.Chat.Sharing;

/// <summary>What one workshop to come takes of one material.</summary>
/// <param name="Workshop">Which.</param>
/// <param name="Amount">How much.</param>
internal sealed record Reservation(Workshop Workshop, Amount Amount)
{
    /// <summary>In the material's own unit.</summary>
    public double Units => Need.UnitsOf(Amount);

    /// <summary>All there are, by the number of the material, the next workshop first.</summary>
    public static ILookup<long, Reservation> All(Studio studio, DateTimeOffset now) => studio.View.Workshops.After(now)
        .SelectMany(workshop => workshop.Takes.Select(part =>
            (Material: part.Key, Reservation: new Reservation(workshop, part.Value))))
        .ToLookup(one => one.Material, one => one.Reservation);

    /// <summary>250 ml for Sat 28 Nov.</summary>
    public string Words(Studio studio) => $"{Show.Amount(Amount)} for {Day(Workshop, studio)}";

    /// <summary>Sat 28 Nov.</summary>
    public static string Day(Workshop workshop, Studio studio) =>
        WallTime.Of(workshop.StartsAt, studio).ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Sat 28 Nov 10:00.</summary>
    public static string Moment(Workshop workshop, Studio studio) =>
        $"{Day(workshop, studio)} {WallTime.Clock(workshop.StartsAt, studio)}";
}
