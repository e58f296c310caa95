using System.Globalization;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Pings;

/// <summary>One look at the studio for all that is due or planned at a moment.</summary>
internal sealed class PingTurn
{
    private readonly Lazy<PieceReckoning> _reckoning;
    private readonly Dictionary<int, LaidCoat?> _coats = [];
    private readonly CurePaces _paces;
    private readonly Lazy<IReadOnlyList<Member>> _members;
    private readonly Dictionary<int, Piece?> _pieces = [];
    private readonly ShelfNeeds _needs;
    private readonly Dictionary<long, IReadOnlyList<Lot>> _lots = [];
    private readonly Lazy<Dictionary<long, Batch>> _batches;

    /// <summary>A look at this moment.</summary>
    public PingTurn(Studio studio, DateTimeOffset now)
    {
        (Studio, Now) = (studio, now);
        _reckoning = new(() => new PieceReckoning(studio.View, studio.Practice, now));
        _paces = new CurePaces(studio.View, studio.Practice);
        _members = new(studio.View.Members.All);
        _needs = new ShelfNeeds(studio, now);
        _batches = new(() => studio.View.Batches.All().Where(batch => batch.LotId is not null)
            .ToDictionary(batch => batch.LotId!.Value));
    }

    /// <summary>The studio.</summary>
    public Studio Studio { get; }

    /// <summary>The moment.</summary>
    public DateTimeOffset Now { get; }

    /// <summary>The studio's wall clock.</summary>
    public StudioZone Zone => Studio.Zone;

    /// <summary>The ready days of the pieces.</summary>
    public PieceReckoning Reckoning => _reckoning.Value;

    /// <summary>The last coat of this piece; none where none stands: it failed, was sanded or undone.</summary>
    public LaidCoat? CoatOf(int number)
    {
        if (!_coats.TryGetValue(number, out var coat))
        {
            _coats[number] = coat = Laid(number);
        }

        return coat;
    }

    /// <summary>The piece of this number; none where it was undone.</summary>
    public Piece? Piece(int number)
    {
        if (!_pieces.TryGetValue(number, out var piece))
        {
            _pieces[number] = piece = Studio.View.Pieces.Find(number);
        }

        return piece;
    }

    /// <summary>Where a piece lies: a shelf, with its room where that is not the first.</summary>
    public string PlaceOf(int number) => Piece(number)?.Shelf ?? "";

    /// <summary>Whose piece it is, as long as they belong to the studio.</summary>
    public Member? MakerOf(int number) => Piece(number) is { } piece
        ? _members.Value.FirstOrDefault(member => member.Name.Equals(piece.Maker, StringComparison.OrdinalIgnoreCase))
        : null;

    /// <summary>Who is told of this piece: its maker, or the first steward once they have left.</summary>
    public Member? AddresseeOf(int number) => Piece(number) is null ? null
        : MakerOf(number) ?? _members.Value.FirstOrDefault(member => member.Role == Role.Steward);

    /// <summary>The member of this number; none where they have left.</summary>
    public Member? Member(long id) => _members.Value.FirstOrDefault(member => member.Id == id);

    /// <summary>Who keeps house.</summary>
    public IEnumerable<Member> Stewards => _members.Value.Where(member => member.Role == Role.Steward);

    /// <summary>Whether this material is to be bought; none where there is none of this number.</summary>
    public ShelfNeed? NeedOf(long material) => _needs.Of(material);

    /// <summary>The lots of a material, the oldest first.</summary>
    public IReadOnlyList<Lot> LotsOf(long material)
    {
        if (!_lots.TryGetValue(material, out var lots))
        {
            _lots[material] = lots = Studio.View.Lots.Of(material);
        }

        return lots;
    }

    /// <summary>The lot of this number; none where it was taken back.</summary>
    public Lot? Lot(long id) => Studio.View.Lots.Find(id);

    /// <summary>The batch that became this lot; none where it was bought.</summary>
    public Batch? BatchOf(long lot) => _batches.Value.GetValueOrDefault(lot);

    /// <summary>Who mixed this batch, as long as they belong to the studio.</summary>
    public Member? MixerOf(Batch batch) => _members.Value.FirstOrDefault(member =>
        member.Name.Equals(batch.Maker, StringComparison.OrdinalIgnoreCase));

    /// <summary>Who may hear of these materials: who keeps house, and who mixed what stands there and goes old.
    /// </summary>
    public IEnumerable<Member> HearersOf(IEnumerable<long> materials) => Stewards.Concat(
        materials.Where(one => NeedOf(one) is { IsMixed: true, Material.ShelfLife: not null })
            .SelectMany(LotsOf).Where(lot => Asking.Need.UnitsOf(lot.Left) > 0)
            .Select(lot => BatchOf(lot.Id)).OfType<Batch>().Select(MixerOf).OfType<Member>())
        .DistinctBy(member => member.Id);

    /// <summary>The numbers of all materials.</summary>
    public IReadOnlyCollection<long> Materials => _needs.Materials;

    /// <summary>The quiet hours of this member; none: the studio's.</summary>
    public QuietHours QuietOf(long? member)
    {
        if (member is { } id && Studio.View.Wishes.Of(id).Quiet is { } own)
        {
            return new QuietHours(own.From, own.Until, Zone);
        }

        var (from, until) = QuietSetting.Read(Studio.View.Studio.Setting(QuietSetting.Name)) ?? QuietSetting.Usual;
        return new QuietHours(from, until, Zone);
    }

    /// <summary>This instant, moved on to the next morning at nine, when people are there.</summary>
    public DateTimeOffset MorningFrom(DateTimeOffset instant)
    {
        var date = Zone.DateOf(instant);
        var nine = Zone.InstantOf(date, new TimeOnly(9, 0));
        return nine >= instant ? nine : Zone.InstantOf(date.AddDays(1), new TimeOnly(9, 0));
    }

    /// <summary>Thu 26 Nov 14:10, on the studio's wall.</summary>
    public string Moment(DateTimeOffset instant) =>
        Zone.LocalOf(instant).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>26 Nov, on the studio's wall.</summary>
    public string Day(DateTimeOffset instant) => Show.Day(Zone.DateOf(instant));

    private LaidCoat? Laid(int number) => Piece(number) is { Stage: Stage.Coated }
        && CoatReckoning.Of([number], Studio.View, Studio.Practice, _paces)
            is [{ HasFailed: false, IsSanded: false } hours]
        && Reckoning.Lines(number).LastOrDefault(line => line.What is PieceEvent.Coated) is { } line
            ? new LaidCoat(line.ActId, hours)
            : null;
}
