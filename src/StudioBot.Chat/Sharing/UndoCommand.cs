using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Sharing;

/// <summary><c>undo</c>: takes back your last record, or the one its button names.</summary>
internal sealed class UndoCommand : Act
{
    private const int MostNamed = 3;

    // What only stewards record, only they take back: else who was one could make themselves one again.
    private static readonly Lazy<HashSet<string>> Housekeeping = new(() =>
    [
        .. Catalogue.Find().Forms.OfType<Act>().Where(form => form.Sheet.StewardsOnly).Select(form => form.Sheet.Word),
    ]);

    private static readonly NumberSlot Record = new(Measure.Turns, "record", "a record", "act 12")
    {
        Leads = ["act"],
        TakesBare = true,
    };

    private static readonly PiecesSlot Piece = new()
    {
        Doubts = _ => "is no record: undo takes back the last one, whatever it was",
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "undo", Room.Sharing, "Takes back your last record.",
        [Record, Piece],
        ["undo"])
    {
        Also = ["revert"],
    };

    /// <summary>The button that takes an act back.</summary>
    public static Button Button(string label, long actId) => new(label, $"undo act {actId}") { IsAnybodys = true };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var acts = writing.Session.Acts;
        var meant = said.Has(Record) ? acts.Find((long)said.Of(Record)) : acts.LastOf(writing.Author);
        if (meant is null)
        {
            return Trouble("There is no record to take back.");
        }

        if (writing.Turn.Chat == ChatKind.Group && !IsWrittenHere(meant, writing))
        {
            return Trouble("That record was not written here: take it back in private.");
        }

        if (!MayUndo(meant, writing))
        {
            var isHousekeeping = Housekeeping.Value.Contains(meant.Kind);
            return Trouble(isHousekeeping
                ? "That record is of the studio's housekeeping: a steward can take it back."
                : "That record is somebody else's: its author or a steward can take it back.") with
            {
                Refused = isHousekeeping ? "for stewards" : "somebody else's",
            };
        }

        var by = new NewAct(ActRecords.Undoing, writing.Author, writing.Turn.Words, writing.Now)
        {
            ChatId = writing.Turn.ChatId,
            MessageId = writing.Turn.MessageId,
        };
        return writing.Session.Undo.Take(meant.Id, by) switch
        {
            Undone.Done done => Done(done, writing),
            Undone.RestsOn rests => Rests(rests, writing),
            Undone.Before => Trouble("That was taken back before."),
            _ => Trouble("That can't be taken back."),
        };
    }

    // Here, too, where the group had another number when it was written.
    private static bool IsWrittenHere(Records.Acts.Act act, Writing writing) =>
        act.ChatId is { } chat && writing.Session.Moves.Now(chat) == writing.Turn.ChatId;

    private static bool MayUndo(Records.Acts.Act act, Writing writing) => writing.Turn.Who.IsSteward
        || (!Housekeeping.Value.Contains(act.Kind)
            && (act.Author?.Id == writing.Author.Id || act.For?.Id == writing.Author.Id || IsPaidTo(act, writing)));

    // Who is said to have got money knows best whether it came.
    private static bool IsPaidTo(Records.Acts.Act act, Writing writing) => act.Kind == "paid"
        && writing.Session.Money.Of(act).Any(line =>
            line.Account is Account.OfMember { MemberId: var id } && id == writing.Author.Id);

    private static Reply Done(Undone.Done done, Writing writing)
    {
        // What was taken back may have moved any estimate: the air of a room, a weighing, a coat.
        writing.Touch(writing.Session.Pieces.All().Select(piece => piece.Number));
        if (done.What.For is { } other
            && writing.Session.Members.All().FirstOrDefault(member => member.Id == other.Id) is { } told
            && told.Id != writing.Author.Id)
        {
            writing.Tell(told, new Reply(
                new Block.Line($"{writing.Author.Name} took back what was recorded for you:"),
                new Block.Sample(done.What.Words)));
        }

        TellOfPayment(done.What, writing);
        var along = done.Along.Take(MostNamed).Select(act => act.Words).ToList();
        IEnumerable<Block> with = along.Count > 0 ? [new Block.Line($"With it: {string.Join(", ", along)}.")] : [];
        return new Reply(
            [
                new Block.Headline("Taken back."),
                new Block.Sample(done.What.Words),
                .. with,
                new Block.Line("Its opposite is booked, its reminders are lifted; nothing is erased."),
            ],
            []);
    }

    // Who paid hears that it did not come, and who was asked whether it came that they were not paid.
    private static void TellOfPayment(Records.Acts.Act what, Writing writing)
    {
        if (what.Kind != "paid")
        {
            return;
        }

        var members = writing.Session.Members.All().Where(member => member.Id != writing.Author.Id).ToList();
        if (members.FirstOrDefault(member => member.Id == what.Author?.Id) is { } payer)
        {
            writing.Tell(payer, new Reply(
                new Block.Line($"{writing.Author.Name} took back what you paid:"),
                new Block.Sample(what.Words)));
        }

        foreach (var receiver in writing.Session.Money.Of(what)
            .Where(line => line.Sum < default(Money) && line.Account is Account.OfMember)
            .Select(line => members.FirstOrDefault(member => line.Account == new Account.OfMember(member.Id)))
            .OfType<Member>()
            .Where(member => member.Id != what.Author?.Id))
        {
            writing.Tell(receiver, new Reply(
                new Block.Line($"{writing.Author.Name} took back what was said to be paid to you:"),
                new Block.Sample(what.Words)));
        }
    }

    private static Reply Rests(Undone.RestsOn rests, Writing writing)
    {
        var named = rests.Later.Take(MostNamed).ToList();
        List<Block> blocks = [new Block.Headline("Not taken back: later records rest on it.")];
        blocks.AddRange(named.Select(act => new Block.Sample(act.Words)));
        blocks.Add(new Block.Line(rests.Later.Count > MostNamed
            ? $"And {rests.Later.Count - MostNamed} more. Take those back first."
            : "Take those back first."));
        return new Reply(
            blocks,
            [.. named.Where(act => MayUndo(act, writing))
                .Select(act => Button("Undo " + act.Kind, act.Id))])
        {
            IsTrouble = true,
        };
    }

    private static Reply Trouble(string why) =>
        new(new Block.Headline(why), new Block.Line("Try"), new Block.Sample("undo list")) { IsTrouble = true };
}
