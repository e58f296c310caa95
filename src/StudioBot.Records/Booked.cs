using StudioBot.Craft.Units;

namespace StudioBot.Records;

/// <summary>The one rounding on the way into the file, half away from zero, and the way back.</summary>
internal static class Booked
{
    public static long Microlitres(Volume volume) => Whole(volume.Millilitres * 1000);

    public static long Milligrams(Mass mass) => Whole(mass.Grams * 1000);

    public static long Micrometres(Length length) => Whole(length.Micrometres);

    public static long At(DateTimeOffset moment) => moment.ToUnixTimeMilliseconds();

    public static Volume Volume(long microlitres) => Craft.Units.Volume.FromMillilitres(microlitres / 1000.0);

    public static Mass Mass(long milligrams) => Craft.Units.Mass.FromGrams(milligrams / 1000.0);

    public static Length Length(long micrometres) => Craft.Units.Length.FromCentimetres(micrometres / 10_000.0);

    public static DateTimeOffset Moment(long at) => DateTimeOffset.FromUnixTimeMilliseconds(at);

    public static DateTimeOffset? Moment(long? at) => at is { } known ? Moment(known) : null;

    private static long Whole(double value) => checked((long)Math.Round(value, MidpointRounding.AwayFromZero));
}
