using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;

namespace StudioBot.Records.Pieces;

/// <summary>What happened to a piece.</summary>
public abstract record PieceEvent
{
    private PieceEvent()
    {
    }

    /// <summary>It was poured.</summary>
    /// <param name="Stage">How far it was with that: drying, unless books opened with it.</param>
    /// <param name="Volume">What was poured; none where nobody measured.</param>
    public sealed record Poured(Stage Stage, Volume? Volume) : PieceEvent;

    /// <summary>So much was mixed for its pour, as measured later; the last figure holds.</summary>
    public sealed record Mixed(Volume Volume) : PieceEvent;

    /// <summary>So much stayed in the cups.</summary>
    public sealed record Left(Volume Volume) : PieceEvent;

    /// <summary>So much ran off and was caught.</summary>
    public sealed record Caught(Volume Volume) : PieceEvent;

    /// <summary>It was laid on this shelf; none: taken off its shelf.</summary>
    public sealed record Shelved(string? Shelf) : PieceEvent;

    /// <summary>It weighed so much.</summary>
    public sealed record Weighed(Mass Mass) : PieceEvent;

    /// <summary>Before it was poured it weighed so much.</summary>
    public sealed record Bare(Mass Mass) : PieceEvent;

    /// <summary>Its maker finds it dry: ready.</summary>
    public sealed record Dry : PieceEvent;

    /// <summary>Its maker finds it not dry yet: drying.</summary>
    /// <param name="Until">Until when nobody wants to be asked; none where nobody said.</param>
    public sealed record NotYet(DateTimeOffset? Until) : PieceEvent;

    /// <summary>It was coated with resin.</summary>
    public sealed record Coated(Coat Coat) : PieceEvent;

    /// <summary>Its last coat failed: coated still, until it is sanded.</summary>
    /// <param name="Why">As typed: fisheyes; none where nobody said.</param>
    public sealed record Failed(string? Why) : PieceEvent;

    /// <summary>Its last coat was sanded: ready for another.</summary>
    public sealed record Sanded : PieceEvent;

    /// <summary>Its resin has had its time: cured.</summary>
    public sealed record Cured : PieceEvent;

    /// <summary>Somebody says how far it is.</summary>
    public sealed record Staged(Stage Stage) : PieceEvent;

    /// <summary>Somebody noted something.</summary>
    public sealed record Note(string Words) : PieceEvent;

    /// <summary>Somebody took a photo.</summary>
    /// <param name="FileId">By which the chat service knows it.</param>
    /// <param name="Words">Its caption; none where it has none.</param>
    public sealed record Photo(string FileId, string? Words) : PieceEvent;

    /// <summary>It is promised for a day; the last promise holds.</summary>
    /// <param name="Until">By when.</param>
    /// <param name="Price">For how much; none where nobody said.</param>
    /// <param name="Words">For whom, as typed; none where nobody said.</param>
    public sealed record Due(DateTimeOffset Until, Money? Price, string? Words) : PieceEvent;

    /// <summary>Its maker keeps it.</summary>
    public sealed record Kept : PieceEvent;

    /// <summary>It was sold; the money is booked beside it.</summary>
    /// <param name="Price">For how much.</param>
    /// <param name="SharePercent">What the seller keeps of it, 0 to 100; none where nobody said.</param>
    /// <param name="Words">By or to whom, as typed; none where nobody said.</param>
    public sealed record Sold(Money Price, double? SharePercent, string? Words) : PieceEvent;

    /// <summary>It was thrown away.</summary>
    /// <param name="Why">As typed; none where nobody said.</param>
    public sealed record Bin(string? Why) : PieceEvent;
}
