using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Records.Pieces;

/// <summary>What happened to a piece, as it stands in the file.</summary>
internal sealed record PieceEventColumns(string Kind)
{
    public string? Stage { get; init; }

    public long? Microlitres { get; init; }

    public long? Milligrams { get; init; }

    public long? Cents { get; init; }

    public double? SharePercent { get; init; }

    public long? UntilAt { get; init; }

    public string? Words { get; init; }

    public string? FileId { get; init; }

    public string? Shelf { get; init; }

    public static PieceEventColumns Of(PieceEvent what) => what switch
    {
        PieceEvent.Poured poured => Staged("poured", poured.Stage) with { Microlitres = Whole(poured.Volume) },
        // A pour without a stage: what was mixed for it, told later.
        PieceEvent.Mixed mixed => new("poured") { Microlitres = Booked.Microlitres(mixed.Volume) },
        PieceEvent.Left left => new("left") { Microlitres = Booked.Microlitres(left.Volume) },
        PieceEvent.Caught caught => new("caught") { Microlitres = Booked.Microlitres(caught.Volume) },
        PieceEvent.Shelved shelved => new("shelved") { Shelf = shelved.Shelf },
        PieceEvent.Weighed weighed => new("weighed") { Milligrams = Booked.Milligrams(weighed.Mass) },
        PieceEvent.Bare bare => new("bare") { Milligrams = Booked.Milligrams(bare.Mass) },
        PieceEvent.Dry => Staged("dry", Pieces.Stage.Ready),
        PieceEvent.NotYet notYet => Staged("notyet", Pieces.Stage.Drying) with { UntilAt = At(notYet.Until) },
        PieceEvent.Coated => Staged("coated", Pieces.Stage.Coated),
        PieceEvent.Failed failed => Staged("failed", Pieces.Stage.Coated) with { Words = failed.Why },
        PieceEvent.Sanded => Staged("sanded", Pieces.Stage.Ready),
        PieceEvent.Cured => Staged("cured", Pieces.Stage.Cured),
        PieceEvent.Staged staged => Staged("staged", staged.Stage),
        PieceEvent.Note note => new("note") { Words = note.Words },
        PieceEvent.Photo photo => new("photo") { FileId = photo.FileId, Words = photo.Words },
        PieceEvent.Due due => new("due") { UntilAt = At(due.Until), Cents = due.Price?.Cents, Words = due.Words },
        PieceEvent.Kept => Staged("kept", Pieces.Stage.Kept),
        PieceEvent.Sold sold => Staged("sold", Pieces.Stage.Sold) with
        {
            Cents = sold.Price.Cents,
            SharePercent = sold.SharePercent,
            Words = sold.Words,
        },
        PieceEvent.Bin bin => Staged("bin", Pieces.Stage.Bin) with { Words = bin.Why },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No columns for this event."),
    };

    /// <summary>What happened; the coat comes from a table of its own.</summary>
    public PieceEvent From(Func<Coat> coat) => Kind switch
    {
        "poured" when Stage is null => new PieceEvent.Mixed(Booked.Volume(Known(Microlitres))),
        "poured" => new PieceEvent.Poured(
            Pieces.Stages.Words.Read(Known(Stage)), Microlitres is { } poured ? Booked.Volume(poured) : null),
        "left" => new PieceEvent.Left(Booked.Volume(Known(Microlitres))),
        "caught" => new PieceEvent.Caught(Booked.Volume(Known(Microlitres))),
        "shelved" => new PieceEvent.Shelved(Shelf),
        "weighed" => new PieceEvent.Weighed(Booked.Mass(Known(Milligrams))),
        "bare" => new PieceEvent.Bare(Booked.Mass(Known(Milligrams))),
        "dry" => new PieceEvent.Dry(),
        "notyet" => new PieceEvent.NotYet(Booked.Moment(UntilAt)),
        "coated" => new PieceEvent.Coated(coat()),
        "failed" => new PieceEvent.Failed(Words),
        "sanded" => new PieceEvent.Sanded(),
        "cured" => new PieceEvent.Cured(),
        "staged" => new PieceEvent.Staged(Pieces.Stages.Words.Read(Known(Stage))),
        "note" => new PieceEvent.Note(Known(Words)),
        "photo" => new PieceEvent.Photo(Known(FileId), Words),
        "due" => new PieceEvent.Due(Booked.Moment(Known(UntilAt)), Price, Words),
        "kept" => new PieceEvent.Kept(),
        "sold" => new PieceEvent.Sold(Known(Price), SharePercent, Words),
        "bin" => new PieceEvent.Bin(Words),
        _ => throw new InvalidOperationException($"The file holds an event of kind {Kind}."),
    };

    private Money? Price => Cents is { } cents ? new Money(cents) : null;

    private static PieceEventColumns Staged(string kind, Stage stage) =>
        new(kind) { Stage = Pieces.Stages.Words.Of(stage) };

    private static long? Whole(Volume? volume) => volume is { } known ? Booked.Microlitres(known) : null;

    private static long? At(DateTimeOffset? moment) => moment is { } known ? Booked.At(known) : null;

    private string Known(string? column) => column ?? throw Absent();

    private T Known<T>(T? column)
        where T : struct => column ?? throw Absent();

    private InvalidOperationException Absent() => new($"An event of kind {Kind} lacks a column that it needs.");
}
