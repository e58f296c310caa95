using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Pings;

/// <summary>A level fell under its reorder point: said once, and again only after it was well above.</summary>
internal sealed class StockLowPing : Ping
{
    private const int MostNamed = 4;
    private const int MostListed = 4;
    private const int MostTicks = 4;

    // What falls within a quarter of an hour, as in a stocktake, is one message.
    private static readonly TimeSpan Gathered = TimeSpan.FromMinutes(15);

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.StockLow, "low", "When a level falls under its reorder point; for stewards.");

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> WantsOf(long material, Member hearer, PingTurn turn)
    {
        if (hearer.Role == Role.Steward && turn.NeedOf(material) is { IsWanted: true, IsOrdered: false } need)
        {
            var subject = PingSubjects.Material(material);
            var said = PingPlans.LastSaid(Sheet.Kind, subject, hearer, turn.Studio.View);
            var isArmed = said is null
                || IsOverdue(need, said.Value)
                || Highest(need, said.Value, turn) >= WellAbove(need, said.Value, turn);
            yield return new Wanted(
                subject, turn.QuietOf(hearer.Id).AwakeFrom(Next(turn.Now)), isArmed ? turn.Now : null)
            {
                Moves = false,
            };
        }
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn) =>
        turn.NeedOf(planned.Subject.Id) is { IsWanted: true, IsOrdered: false }
            ? new SubjectState.Standing(planned.At)
            : new SubjectState.Over(WhyUnwanted.Settled);

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        var needs = Needs(line, turn);
        List<string> named = [.. needs.Take(MostNamed).Select(need =>
            $"{need.Material.Name} {(need.Level.IsOut ? "none" : Show.Amount(need.Level.Left))}")];
        return needs.Count > MostNamed
            ? $"Low on the shelf: {string.Join(", ", named)} and {needs.Count - MostNamed} more."
            : $"Low on the shelf: {Sentences.And(named)}.";
    }

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn)
    {
        foreach (var need in lines.SelectMany(line => Needs(line, turn)).Take(MostListed))
        {
            var overdue = need.Order is null ? "" : ", ordered but overdue";
            yield return new Block.Line($"{Sentences.Capital(need.Material.Name)} {Stands(need)}{overdue}: "
                + $"{(need.IsMixed ? "mix" : "buy")} {need.Words()}.");
        }
    }

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn) =>
    [
        new Button("What to buy", "buy"),
        .. lines.SelectMany(line => Needs(line, turn)).Where(need => !need.IsMixed).Take(MostTicks)
            .Select(need => OrderedCommand.Button(need.Material.Name)),
    ];

    private static List<ShelfNeed> Needs(PingLine line, PingTurn turn) =>
        [.. line.Pings.Select(ping => turn.NeedOf(ping.Planned.Subject.Id)).OfType<ShelfNeed>()];

    // Lasts about 12 days, by few uses, 250 ml reserved.
    private static string Stands(ShelfNeed need)
    {
        if (need is { Free: < 0, Booked: > 0 })
        {
            return $"is {Units(need, -need.Free)} short of what is reserved";
        }

        var lasts = need.Lasts is { } days ? $"lasts about {days}"
            : need.Level.IsOut ? "is used up"
            : need.Booked > 0 ? "is all reserved"
            : "not used lately";
        var between = need.Between is { } span ? $" ({span})" : "";
        var guess = need is { Lasts: not null, Use.Rate.IsLittleData: true } ? ", by few uses" : "";
        var kept = need is { Booked: > 0, Free: > 0 } ? $", {Units(need, need.Booked)} reserved" : "";
        return lasts + between + guess + kept;
    }

    private static string Units(ShelfNeed need, double units) => Show.Amount(new Need(need.Material, units).Amount);

    // It was ordered since it was said, and did not come.
    private static bool IsOverdue(ShelfNeed need, DateTimeOffset said) => need.Order is { } order && order.Until > said;

    // The highest level since then, found backwards from the one there is now.
    private static double Highest(ShelfNeed need, DateTimeOffset since, PingTurn turn)
    {
        double level = need.Units, highest = level;
        foreach (var line in turn.Studio.View.Stock.WrittenAfter(since, need.Material.Id).Reverse())
        {
            level -= line.Fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount);
            highest = Math.Max(highest, level);
        }

        return highest;
    }

    // By the mark there was when it was said, too: else one large use would lift the mark past all that was bought.
    private static double WellAbove(ShelfNeed need, DateTimeOffset said, PingTurn turn)
    {
        var then = new ShelfNeeds(turn.Studio, said).Of(need.Material);
        return Math.Min(need.WellAbove, then.WellAbove);
    }

    private static DateTimeOffset Next(DateTimeOffset now)
    {
        var ticks = now.UtcTicks + Gathered.Ticks - 1;
        return new DateTimeOffset(ticks - ticks % Gathered.Ticks, TimeSpan.Zero);
    }
}
