using StudioBot.Chat.Asking;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Practice;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>coat 17 180 ml 2:1 lot H-12</c>: a coat of resin.</summary>
internal sealed class CoatCommand : Act
{
    private const int MostDoubts = 4;
    private const int MostHours = 2;

    private static readonly CupPartsSlot Parts = new() { Key = "" };
    private static readonly RatioSlot Ratio = new();
    private static readonly LotSlot Lots = new();
    private static readonly AmountSlot Amount = new("an amount", "180 ml");
    private static readonly AirSlot Air = new();
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "coat", Room.Recording, "A coat of resin.",
        [Pieces, Parts, Ratio, Lots, Amount, Air, RecordSlots.Day, RecordSlots.For],
        ["coat 17 180 ml 2:1 lot H-12", "coat 17 120 A 60 B lots R-3 H-12"])
    {
        More = "Both parts leave the shelf; its film, when the next coat may go on, when it is cured.",
        Also = ["coated", "resined"],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said switch
    {
        _ when said.Has(Parts) && said.Of(Parts).Count < 2 =>
            new Misread("", "the other part of the resin is missing", Sheet.Examples[1]),
        _ when !said.Has(Amount) && !said.Has(Parts) => new Misread("", "the amount is missing", Sheet.Examples[0]),
        _ => null,
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => MixedResin.Of(
        said.Or(Parts, []), said.Has(Amount) ? said.Of(Amount) : null, said.Has(Ratio) ? said.Of(Ratio) : null);

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if ((TalkedOf.Before(pieces, writing) ?? TalkedOf.Against(
                pieces, "it takes no coat", null, Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured)) is { } gone)
        {
            return gone;
        }

        IReadOnlyList<string> labels = said.Or(Lots, []);
        if (ResinTaken.Foreign(labels, writing) is { } foreign)
        {
            return TalkedOf.Trouble($"{foreign}. Nothing recorded.", Sheet.Examples[1]);
        }

        var (mix, trouble) = CoatMix.Of(
            said.Or(Parts, []),
            said.Has(Amount) ? said.Of(Amount) : null,
            said.Has(Ratio) ? said.Of(Ratio) : null,
            writing.Studio);
        if (mix is null || trouble is not null)
        {
            return trouble ?? throw new InvalidOperationException("A mix is there, or why it is not.");
        }

        var shares = CoatShare.Of(pieces, mix.A, mix.B, mix.System);
        var before = CoatReckoning.Of(
            [.. pieces.Select(piece => piece.Number)], writing.Session, writing.Practice);
        ResinTaken[] taken =
        [
            ResinTaken.From(MaterialForm.ResinA, mix.NamedA, labels, mix.A, writing),
            ResinTaken.From(MaterialForm.HardenerB, mix.NamedB, labels, mix.B, writing),
        ];
        var materials = writing.Session.Materials.All().Where(one => taken.Any(part => part.Name == one.Name));
        var early = FirstCame.Doubt(materials, labels, writing);
        List<string> doubts = [.. Doubts(pieces, mix, shares, taken), .. early is null ? (string[])[] : [early]];
        if (doubts.Count > 0 && !writing.Turn.IsAgreed)
        {
            return Asked(doubts, mix, said, writing);
        }

        foreach (var share in shares)
        {
            writing.Session.Pieces.Book(share.Piece.Number, Coated(share, taken, said, writing), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        return Answer(shares, mix, taken, before, writing);
    }

    private static PieceEvent.Coated Coated(CoatShare share, ResinTaken[] taken, Phrase said, Writing writing) => new(
        new Coat(share.A, share.B)
        {
            Ratio = said.Has(Ratio) ? said.Of(Ratio) : null,
            Film = share.Film,
            Air = AirOf(share.Piece, said.Has(Air) ? said.Of(Air) : null, writing),
            LotIds = [.. taken.SelectMany(part => part.FromLots).Select(lot => lot.LotId).Distinct()],
        });

    // The air that was said, else the newest reading of the room where the piece lies; of one figure said, the other's.
    private static RoomAir? AirOf(Piece piece, AirWords? words, Writing writing)
    {
        var room = PiecePlace.Room(piece.Shelf, writing.Session);
        var reading = writing.Session.Rooms.Readings(writing.HappenedAt - CoatReckoning.OldestAir)
            .LastOrDefault(one => one.Room == room && one.At <= writing.HappenedAt);
        return (words?.Air ?? reading?.Temperature, words?.Humidity ?? reading?.Humidity) is ({ } warm, { } damp)
            && RoomAir.Read(warm, damp) is Finding<RoomAir>.Found(var air)
            ? air
            : null;
    }

    private static IEnumerable<string> Doubts(
        IReadOnlyList<Piece> pieces, CoatMix mix, IReadOnlyList<CoatShare> shares, ResinTaken[] taken)
    {
        if (mix.IsMeasured && mix.Check is { Verdict: RatioVerdict.DoNotPour } off)
        {
            yield return $"{Off(off)} for {ResinJob.Words(mix.Resin.Ratio)}: it stays soft or sticky. Don't pour"
                + Mended(off, mix);
            yield return "Uncured resin harms skin: gloves; the product's sheet first";
        }

        var wet = pieces.Where(piece => piece.Stage == Stage.Drying).ToList();
        if (wet.Count > 0)
        {
            yield return $"{TalkedOf.Words(wet)} {TalkedOf.Are(wet)} still drying: resin shuts the water in";
        }

        if (shares.FirstOrDefault(share => share.IsCast || share.IsTooThin) is { } odd)
        {
            yield return $"{Show.Film(odd.Film)} on {odd.Piece.Number} "
                + (odd.IsCast ? "is a cast, not a coat: it heats up" : "is thinner than one can spread");
        }

        foreach (var missing in taken.Select(part => part.Missing).OfType<string>())
        {
            yield return missing;
        }
    }

    private static string Off(RatioCheck check) =>
        $"B is {Show.Share(Math.Abs(check.Off))} {(check.Off < 0 ? "short" : "over")}";

    private static string Mended(RatioCheck check, CoatMix mix) => check.Off < 0
        ? $": add {Show.Volume(check.AddB / mix.Resin.PartB)} of B while it is fresh"
        : $": add {Show.Volume(check.AddA / mix.Resin.PartA)} of A while it is fresh";

    private static Reply Asked(IReadOnlyList<string> doubts, CoatMix mix, Phrase said, Writing writing)
    {
        List<Button> buttons = [new Button("Coated all the same", said.Line) { Agrees = true }];
        if (mix.IsMeasured && mix.Check.Verdict == RatioVerdict.DoNotPour && !said.Has(Ratio))
        {
            buttons.AddRange(mix.Others(writing.Practice).Take(2).Select(other => other.Ratio.Value).Select(other =>
                new Button($"It is {other}", $"{said.Line} {other}{(other.By == RatioBy.Mass ? " by weight" : "")}")));
        }

        return new Reply(
            [
                new Block.Headline("Nothing recorded yet."),
                .. doubts.Take(MostDoubts).Select(doubt => new Block.Caution(Sentences.Of(doubt))),
            ],
            buttons)
        {
            IsTrouble = true,
        };
    }

    private static Reply Answer(
        IReadOnlyList<CoatShare> shares,
        CoatMix mix,
        ResinTaken[] taken,
        IReadOnlyList<CoatReckoning> before,
        Writing writing)
    {
        var laid = CoatReckoning
            .Of([.. shares.Select(share => share.Piece.Number)], writing.Session, writing.Practice)
            .ToDictionary(coat => coat.Piece);
        var coats = shares.Select(share => laid[share.Piece.Number]).ToList();
        var numbers = TalkedOf.Words(shares.Select(share => share.Piece.Number));
        var which = coats.Select(coat => coat.Number).Distinct().ToList() is [var only] ? $"coat {only}" : "coated";
        List<Block> blocks =
        [
            new Block.Headline($"{numbers}, {which}: {Show.Volume(mix.Total)}, {Films(shares)}."),
            FitRows.Of([.. taken.Select(Row)]),
        ];
        var lots = taken.SelectMany(part => part.Labels).ToList();
        var flows = Flow(coats[0], mix.System, StudioGels.Of(writing.Studio).Pace(mix.System));
        if (lots.Count > 0 || flows.Length > 0)
        {
            blocks.Add(new Block.Line(
                ((lots.Count > 0 ? $"Lots {string.Join(", ", lots)}. " : "") + flows).Trim()));
        }

        blocks.AddRange(Hours(coats, writing).Select(line => new Block.Line(line)));
        if (Careful(mix, taken, before, writing) is { } careful)
        {
            blocks.Add(new Block.Caution(careful));
        }

        blocks.Add(Cautions.InAWord(writing.Studio, SafetySubject.ResinSkin));
        return new Reply(blocks);
    }

    // Pieces in rooms of their own have windows of their own; then their cures are left to their cards.
    private static IEnumerable<string> Hours(List<CoatReckoning> coats, Writing writing)
    {
        var alike = coats.GroupBy(coat => CoatHours.Window(coat, writing.Turn)).ToList();
        if (alike.Count == 1)
        {
            yield return $"{alike[0].Key} {CoatHours.Cure(coats[0], writing.Turn)}".Trim();
            yield break;
        }

        foreach (var room in alike.Take(MostHours))
        {
            yield return $"{TalkedOf.Words(room.Select(coat => coat.Piece))}: {room.Key}";
        }

        if (alike.Count > MostHours)
        {
            yield return "The others: see their cards.";
        }
    }

    private static string Films(IReadOnlyList<CoatShare> shares)
    {
        var (thin, thick) = (shares.Min(share => share.Film), shares.Max(share => share.Film));
        return Show.Film(thin) == Show.Film(thick)
            ? $"film {Show.Film(thin)}"
            : $"film {Show.Number(thin.Millimetres, 2)} to {Show.Film(thick)}";
    }

    private static Figure Row(ResinTaken part) => new(part.Name, Show.Volume(part.Wanted) + (part switch
    {
        { Missing: not null } => ", not booked",
        { Left: { } left } => $", {Show.Amount(left)} left",
        _ => "",
    }));

    private static string Flow(CoatReckoning coat, ResinSystem system, GelPace gel)
    {
        var film = coat.Film[0].Film;
        var time = ResinWarnings.Time(
            gel.Over(new PotLife(system.WorkingTime.Value, system.TimesAt.Value).In(film)));
        return time is null
            ? ""
            : $"Flows {Show.Time(time.Likely)} at {Show.Degrees(film)}{(coat.IsAssumed ? ", assumed" : "")}"
                + $"{(gel.Shortened < 1 ? ", own" : "")}.";
    }

    // One line, the gravest first.
    private static string? Careful(
        CoatMix mix, ResinTaken[] taken, IReadOnlyList<CoatReckoning> before, Writing writing)
    {
        if (taken.Select(part => part.Stopped).OfType<string>().FirstOrDefault() is { } stopped)
        {
            return Sentences.Of(stopped);
        }

        if (mix.IsMeasured && mix.Check is { Verdict: not RatioVerdict.Fine } off)
        {
            return $"{Off(off)} for {ResinJob.Words(mix.Resin.Ratio)}.";
        }

        var open = before.Where(coat => !coat.IsSanded).ToList();
        if (open.FirstOrDefault(coat => coat.HasFailed) is { } failed)
        {
            return $"The failed coat on {failed.Piece} was not sanded.";
        }

        if (open.FirstOrDefault(coat => coat.KnownWindow?.OpensFrom > writing.HappenedAt) is { } wet)
        {
            return $"The coat under it on {wet.Piece} may have been wet still.";
        }

        return open.FirstOrDefault(coat => coat.KnownWindow?.MayHaveClosed(writing.HappenedAt) == true) is { } late
            ? $"The window on {late.Piece} may have closed: sanded, it would hold better."
            : null;
    }
}
