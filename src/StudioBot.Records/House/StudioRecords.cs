using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.House;

/// <summary>What a studio has set.</summary>
public sealed class StudioRecords
{
    private readonly SqliteConnection connection;

    internal StudioRecords(SqliteConnection connection) => this.connection = connection;

    private const string Set = """
        select name, zone, currency, units, scoop_microlitres as scoopMicrolitres
        from studio
        """;

    /// <summary>The studio's settings; none while it has not been founded.</summary>
    public StudioSettings? Settings() => connection.QuerySingleOrDefault<SettingsRow>(Set)?.From();

    private const string Keep = """
        insert into studio (id, name, zone, currency, units, scoop_microlitres)
        values (1, $name, $zone, $currency, $units, $scoop)
        on conflict (id) do update
        set name = $name, zone = $zone, currency = $currency, units = $units, scoop_microlitres = $scoop
        """;

    /// <summary>Founds the studio, or changes what it has set.</summary>
    public void Change(StudioSettings settings) => connection.Execute(Keep, new
    {
        name = settings.Name,
        zone = settings.Zone,
        currency = settings.Currency,
        units = StoredWords.Units.Of(settings.Units),
        scoop = Booked.Microlitres(settings.Scoop),
    });

    private const string Overrides = """
        select name, laid_micrometres as laidMicrometres, run_off_share as runOffShare
        from technique_override
        order by name
        """;

    /// <summary>What this studio found for its techniques, by name.</summary>
    public IReadOnlyList<TechniqueOverride> TechniqueOverrides() =>
        [.. connection.Query<OverrideRow>(Overrides).Select(row => row.From())];

    private const string KeepOverride = """
        insert into technique_override (name, laid_micrometres, run_off_share)
        values ($name, $laid, $runOff)
        on conflict (name) do update
        set laid_micrometres = $laid, run_off_share = $runOff
        """;

    /// <summary>Keeps what was found for a technique in place of what was kept before.</summary>
    public void Override(TechniqueOverride found) => connection.Execute(KeepOverride, new
    {
        name = found.Name,
        laid = found.Laid is { } laid ? Booked.Micrometres(laid) : (long?)null,
        runOff = found.RunOff,
    });

    private sealed record SettingsRow(string Name, string Zone, string Currency, string Units, long ScoopMicrolitres)
    {
        public StudioSettings From() =>
            new(Name, Zone, Currency, StoredWords.Units.Read(Units), Booked.Volume(ScoopMicrolitres));
    }

    private sealed record OverrideRow(string Name, long? LaidMicrometres, double? RunOffShare)
    {
        public TechniqueOverride From() =>
            new(Name, LaidMicrometres is { } laid ? Booked.Length(laid) : null, RunOffShare);
    }
}
