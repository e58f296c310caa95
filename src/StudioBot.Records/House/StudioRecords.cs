using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.House;

/// <summary>What a studio has set.</summary>
public sealed class StudioRecords
{
    private const long TheOne = 1;

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly Remembered<Known> known;
    private readonly Remembered<IReadOnlyList<TechniqueOverride>> overrides;
    private readonly RememberedBy<string, string?> settings;

    internal StudioRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        known = new(connection, [KeptTable.Studio.Name], () =>
            new(connection.QuerySingleOrDefault<SettingsRow>(HasSet)?.From()));
        overrides = new(connection, [KeptTable.Technique.Name], () =>
            [.. connection.Query<OverrideRow>(Overrides).Select(row => row.From())]);
        settings = new(connection, [KeptTable.Setting.Name], name =>
            connection.QuerySingleOrDefault<string>(Other, new { name }));
    }

    private const string HasSet = """
        select name, zone, currency, units, scoop_microlitres as scoopMicrolitres
        from studio
        """;

    /// <summary>The studio's settings; none while it has not been founded.</summary>
    public StudioSettings? Settings() => known.Value.Settings;

    private const string Keep = """
        insert into studio (id, name, zone, currency, units, scoop_microlitres)
        values (1, $name, $zone, $currency, $units, $scoop)
        on conflict (id) do update
        set name = $name, zone = $zone, currency = $currency, units = $units, scoop_microlitres = $scoop
        """;

    /// <summary>Founds the studio, or changes what it has set.</summary>
    /// <param name="settings">All of it, as it is from now on.</param>
    /// <param name="act">The act that changes it; none where a studio is founded.</param>
    public void Change(StudioSettings settings, Act? act = null) => kept.Change(act, KeptTable.Studio, TheOne, () =>
        connection.Execute(Keep, new
        {
            name = settings.Name,
            zone = settings.Zone,
            currency = settings.Currency,
            units = StoredWords.Units.Of(settings.Units),
            scoop = Booked.Microlitres(settings.Scoop),
        }));

    private const string Other = """
        select value
        from studio_setting
        where name = $name
        """;

    /// <summary>Something else the studio has set, as its command wrote it; none where it has not.</summary>
    public string? Setting(string name) => settings.Of(name);

    private const string Others = """
        select name, value
        from studio_setting
        order by name
        """;

    /// <summary>Everything else the studio has set, by name, each as its command wrote it.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> AllSet() => [.. connection.Query<OtherRow>(Others)
        .Select(row => new KeyValuePair<string, string>(row.Name, row.Value))];

    private const string KeepOther = """
        insert into studio_setting (name, value)
        values ($name, $value)
        on conflict (name) do update
        set value = $value
        """;

    private const string DropOther = """
        delete from studio_setting
        where name = $name
        """;

    /// <summary>The studio sets something else.</summary>
    /// <param name="name">Which, 1 to 40 characters.</param>
    /// <param name="value">As its command will read it; none: set no more.</param>
    /// <param name="act">The act that sets it; none where nobody does: it was learnt, and no undo takes it back.
    /// </param>
    public void Set(string name, string? value, Act? act = null) => kept.Change(act, KeptTable.Setting, name, () =>
        connection.Execute(value is null ? DropOther : KeepOther, new { name, value }));

    private const string Overrides = """
        select name, laid_micrometres as laidMicrometres, run_off_share as runOffShare
        from technique_override
        order by name
        """;

    /// <summary>What this studio found for its techniques, by name.</summary>
    public IReadOnlyList<TechniqueOverride> TechniqueOverrides() => overrides.Value;

    private const string KeepOverride = """
        insert into technique_override (name, laid_micrometres, run_off_share)
        values ($name, $laid, $runOff)
        on conflict (name) do update
        set laid_micrometres = $laid, run_off_share = $runOff
        """;

    /// <summary>Keeps what was found for a technique in place of what was kept before.</summary>
    /// <param name="found">What, for which technique.</param>
    /// <param name="act">The act that says so; none where books open with it.</param>
    public void Override(TechniqueOverride found, Act? act = null) =>
        kept.Change(act, KeptTable.Technique, found.Name, () => connection.Execute(KeepOverride, new
        {
            name = found.Name,
            laid = found.Laid is { } laid ? Booked.Micrometres(laid) : (long?)null,
            runOff = found.RunOff,
        }));

    private const string SetMoments = """
        select act.written_at as written, act.happened_at as about
        from setting_change as change
        cross join act on act.id = change.act_id
        where change.table_name = 'studio_setting'
          and change.row_key = $name
          and change.row_after is not null
          and act.undoes_id is null
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
        order by change.id
        """;

    /// <summary>The moments at which something of this name was set, and which they are about, in the order it was
    /// written; what was taken back is not among them.</summary>
    public IReadOnlyList<(DateTimeOffset Written, DateTimeOffset About)> SetAt(string name) =>
        [.. connection.Query<SetRow>(SetMoments, new { name })
            .Select(row => (Booked.Moment(row.Written), Booked.Moment(row.About)))];

    // None, too, is known.
    private sealed record Known(StudioSettings? Settings);

    private sealed record SetRow(long Written, long About);

    private sealed record SettingsRow(string Name, string Zone, string Currency, string Units, long ScoopMicrolitres)
    {
        public StudioSettings From() =>
            new(Name, Zone, Currency, StoredWords.Units.Read(Units), Booked.Volume(ScoopMicrolitres));
    }

    private sealed record OtherRow(string Name, string Value);

    private sealed record OverrideRow(string Name, long? LaidMicrometres, double? RunOffShare)
    {
        public TechniqueOverride From() =>
            new(Name, LaidMicrometres is { } laid ? Booked.Length(laid) : null, RunOffShare);
    }
}
