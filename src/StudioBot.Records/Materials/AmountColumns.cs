namespace StudioBot.Records.Materials;

/// <summary>An amount as it stands in the file: one of three columns set.</summary>
internal readonly record struct AmountColumns(long? Microlitres, long? Milligrams, long? Pieces)
{
    public static AmountColumns Of(Amount? amount) => amount switch
    {
        Amount.ByVolume poured => new(Booked.Microlitres(poured.Volume), null, null),
        Amount.ByMass weighed => new(null, Booked.Milligrams(weighed.Mass), null),
        Amount.ByCount counted => new(null, null, counted.Count),
        _ => default,
    };

    /// <summary>The amount; none where no column is set.</summary>
    public Amount? From() => this switch
    {
        { Microlitres: { } volume } => new Amount.ByVolume(Booked.Volume(volume)),
        { Milligrams: { } mass } => new Amount.ByMass(Booked.Mass(mass)),
        { Pieces: { } count } => new Amount.ByCount(checked((int)count)),
        _ => null,
    };

    /// <summary>The amount, where the table sees to it that there is one.</summary>
    public Amount Known() => From() ?? throw new InvalidOperationException("No column holds the amount.");
}
