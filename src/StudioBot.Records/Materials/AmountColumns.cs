namespace StudioBot.Records.Materials;

/// <summary>An amount as it stands in the file: one of three columns set; below zero where a book draws.</summary>
internal readonly record struct AmountColumns(long? Microlitres, long? Milligrams, long? Pieces)
{
    /// <summary>In the book's whole units, whichever they are; zero where no column is set.</summary>
    public long Whole => Microlitres ?? Milligrams ?? Pieces ?? 0;

    public static AmountColumns Of(Amount? amount) => amount switch
    {
        Amount.ByVolume poured => new(Booked.Microlitres(poured.Volume), null, null),
        Amount.ByMass weighed => new(null, Booked.Milligrams(weighed.Mass), null),
        Amount.ByCount counted => new(null, null, counted.Count),
        _ => default,
    };

    /// <summary>So many whole units, measured as this amount is.</summary>
    public static AmountColumns Like(Amount amount, long whole) => amount switch
    {
        Amount.ByVolume => new(whole, null, null),
        Amount.ByMass => new(null, whole, null),
        _ => new(null, null, whole),
    };

    /// <summary>Without its sign.</summary>
    public AmountColumns Magnitude() => new(Positive(Microlitres), Positive(Milligrams), Positive(Pieces));

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

    private static long? Positive(long? units) => units is { } signed ? Math.Abs(signed) : null;
}
