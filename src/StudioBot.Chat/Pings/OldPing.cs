using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Pings;

/// <summary>A lot or a batch goes old: said once soon before, and once when it has.</summary>
internal sealed class OldPing : Ping
{
    private const int MostNamed = 6;
    private const int MostButtons = 3;

    /// <inheritdoc/>
    public override PingSheet Sheet { get; } = new(
        PingKind.Old, "old", "When a lot or a batch goes old; for stewards, and who mixed it.");

    /// <inheritdoc/>
    internal override IEnumerable<Wanted> WantsOf(long material, Member hearer, PingTurn turn)
    {
        if (turn.NeedOf(material)?.Material.ShelfLife is null)
        {
            yield break;
        }

        foreach (var lot in turn.LotsOf(material).Where(lot => IsInUse(lot) && IsFor(lot, hearer, turn)))
        {
            if (AgeOf(lot, turn) is { } age)
            {
                var subject = PingSubjects.Lot(lot.Id);
                var isSoon = turn.Now < age.OldAt
                    && PingPlans.LastSaid(Sheet.Kind, subject, hearer, turn.Studio.View) is null;
                yield return isSoon
                    ? new Wanted(subject, turn.MorningFrom(age.SoonAt))
                    : new Wanted(subject, turn.MorningFrom(age.OldAt), Since: age.OldAt);
            }
        }
    }

    /// <inheritdoc/>
    internal override SubjectState StateOf(PlannedPing planned, PingTurn turn) => turn.Lot(planned.Subject.Id) switch
    {
        null => new SubjectState.Over(WhyUnwanted.Undone),
        { Stopped: not null } => new SubjectState.Over(WhyUnwanted.Stopped),
        var lot when !IsInUse(lot) => new SubjectState.Over(WhyUnwanted.Settled),
        var lot => AgeOf(lot, turn) is { } age
            ? new SubjectState.Standing(turn.Now < age.SoonAt ? turn.MorningFrom(age.SoonAt) : planned.At)
            : new SubjectState.Over(WhyUnwanted.Settled),
    };

    /// <inheritdoc/>
    internal override string Say(PingLine line, PingTurn turn)
    {
        List<(Lot Lot, ShelfAge Age)> lots = [.. Lots(line, turn)];
        List<(Lot Lot, ShelfAge Age)> past = [.. lots.Where(one => one.Age.OldAt <= turn.Now)];
        List<(Lot Lot, ShelfAge Age)> soon = [.. lots.Except(past)];
        List<string> parts =
        [
            .. past.Count > 0 ? (string[])[$"Gone old: {Named(past, "since", turn)}."] : [],
            .. soon.Count > 0 ? (string[])[$"Old soon: {Named(soon, "on", turn)}."] : [],
        ];
        return string.Join(' ', parts);
    }

    /// <inheritdoc/>
    internal override string SayLate(PingLine line, WhatHolds now, PingTurn turn) => Say(line, turn);

    /// <inheritdoc/>
    internal override IEnumerable<Block> Under(IReadOnlyList<PingLine> lines, PingTurn turn) =>
    [
        new Block.Line("Look, smell and stir before use: by how long it keeps here, not by a test."),
    ];

    /// <inheritdoc/>
    internal override IEnumerable<Button> Buttons(IReadOnlyList<PingLine> lines, PingTurn turn) => lines
        .SelectMany(line => Lots(line, turn))
        .Take(MostButtons)
        .Select(one => turn.BatchOf(one.Lot.Id) is { } batch
            ? new Button($"Batch {batch.Number}", $"batch {batch.Number}")
            : one.Lot.Label is { } label
                ? new Button(Labels.Short($"Lot {label}"), $"lot {label}")
                : new Button(Labels.Short($"Stock {NameOf(one.Lot, turn)}"), $"stock {NameOf(one.Lot, turn)}"));

    private static bool IsInUse(Lot lot) => lot.Stopped is null && Need.UnitsOf(lot.Left) > 0;

    private static bool IsFor(Lot lot, Member hearer, PingTurn turn) => hearer.Role == Role.Steward
        || turn.BatchOf(lot.Id) is { } batch && turn.MixerOf(batch)?.Id == hearer.Id;

    private static ShelfAge? AgeOf(Lot lot, PingTurn turn) =>
        turn.NeedOf(lot.MaterialId) is { } need ? ShelfAge.Of(lot, need.Material) : null;

    private static IEnumerable<(Lot Lot, ShelfAge Age)> Lots(PingLine line, PingTurn turn) => line.Pings
        .Select(ping => turn.Lot(ping.Planned.Subject.Id))
        .OfType<Lot>()
        .DistinctBy(lot => lot.Id)
        .Select(lot => (lot, Age: AgeOf(lot, turn)))
        .Where(one => one.Age is not null)
        .Select(one => (one.lot, one.Age!));

    // White W-1 since 3 Nov, batch 14 of medium since 5 Nov.
    private static string Named(List<(Lot Lot, ShelfAge Age)> lots, string word, PingTurn turn)
    {
        List<string> named = [.. lots.Take(MostNamed).Select(one =>
            $"{Called(one.Lot, turn)} {word} {turn.Day(one.Age.OldAt)}, {Show.Amount(one.Lot.Left)}")];
        return string.Join("; ", named) + (lots.Count > MostNamed ? $" and {lots.Count - MostNamed} more" : "");
    }

    private static string Called(Lot lot, PingTurn turn) => turn.BatchOf(lot.Id) is { } batch
        ? $"batch {batch.Number} ({NameOf(lot, turn)})"
        : lot.Label is { } label ? $"{NameOf(lot, turn)} {label}" : NameOf(lot, turn);

    private static string NameOf(Lot lot, PingTurn turn) => turn.NeedOf(lot.MaterialId)!.Material.Name;
}
