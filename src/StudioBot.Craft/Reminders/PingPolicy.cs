namespace StudioBot.Craft.Reminders;

/// <summary>What a kind of ping does when its hour is missed, quiet, or overtaken.</summary>
/// <param name="Lapses">It is about minutes: later there is nothing left to do.</param>
/// <param name="MayWake">It may break the quiet hours of one who asked for that.</param>
/// <param name="EndsWithCoat">The next coat on the piece makes it idle.</param>
public sealed record PingPolicy(bool Lapses, bool MayWake, bool EndsWithCoat)
{
    /// <summary>The policy of a kind.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such kind.</exception>
    public static PingPolicy Of(PingKind kind) => kind switch
    {
        PingKind.Torch or PingKind.Drips => new(Lapses: true, MayWake: false, EndsWithCoat: true),
        PingKind.WindowCloses => new(Lapses: false, MayWake: true, EndsWithCoat: true),
        PingKind.WindowTonight or PingKind.WindowOpens or PingKind.Ready or PingKind.Weigh
            or PingKind.Handling or PingKind.Cured => new(Lapses: false, MayWake: false, EndsWithCoat: true),
        PingKind.DueDanger or PingKind.AskedFor or PingKind.StockLow or PingKind.Old
            or PingKind.Week => new(Lapses: false, MayWake: false, EndsWithCoat: false),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such ping."),
    };
}
