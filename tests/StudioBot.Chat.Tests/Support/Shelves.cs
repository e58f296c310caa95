using StudioBot.Chat.Replies;
using StudioBot.Records.Ledger;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Tests.Support;

/// <summary>What stands on the shelves of a studio that is written to, and what its replies hold.</summary>
internal static class Shelves
{
    /// <summary>What is left of a material, in ml, g or pieces, to a thousandth.</summary>
    public static double Level(this LiveStudio studio, string material) => studio.Look(view =>
        Units(view.Materials.Levels().Single(level => level.MaterialId == view.Materials.All().Single(one => one.Name == material).Id).Left));

    /// <summary>What is left of a lot.</summary>
    public static double Left(this LiveStudio studio, string label) =>
        studio.Look(view => Units(view.Lots.All().Single(lot => lot.Label == label).Left));

    /// <summary>What stands in the money book, by member's name, kitty or studio, in cents.</summary>
    public static Dictionary<string, long> Balances(this LiveStudio studio) => studio.Look(view =>
        view.Money.Balances().ToDictionary(line => Named(line.Account, view), line => line.Sum.Cents));

    /// <summary>Every level and every balance, to be compared.</summary>
    public static string Whole(this LiveStudio studio) => studio.Look(view => string.Join(
        '|',
        view.Lots.All().Where(lot => Units(lot.Left) > 0).Select(lot => $"{lot.Id}:{Units(lot.Left)}")
            .Concat(view.Money.Balances().Select(line => $"{Named(line.Account, view)}:{line.Sum}"))));

    /// <summary>Says a line that is recorded, and that its reply fits a phone; its words.</summary>
    public static string Tells(this LiveStudio studio, string words, string by = "Mira", bool agreed = false)
    {
        var outcome = studio.Say(words, by, agreed);
        Assert.True(outcome.Recorded, outcome.Reply.PlainText);
        Fits(outcome.Reply);
        Assert.Contains(outcome.Reply.Buttons, button => button.Label == "Undo");
        return Words(outcome.Reply);
    }

    /// <summary>Says a line that is refused, changes nothing, and shows only messages that can be read.</summary>
    public static Reply Refuses(this LiveStudio studio, string words, string by = "Mira")
    {
        var before = studio.Whole();
        var outcome = studio.Say(words, by);
        Assert.False(outcome.Recorded, outcome.Reply.PlainText);
        Assert.True(outcome.Reply.IsTrouble);
        Assert.Equal(before, studio.Whole());
        Fits(outcome.Reply);
        return outcome.Reply;
    }

    /// <summary>What a line wrote is gone when it is taken back.</summary>
    public static void IsUndone(this LiveStudio studio, string words, string by = "Mira")
    {
        var before = studio.Whole();
        studio.Tells(words, by);
        Assert.NotEqual(before, studio.Whole());
        Assert.True(studio.Say("undo", by).Recorded);
        Assert.Equal(before, studio.Whole());
    }

    /// <summary>The words of a reply, its lines parted by one sign.</summary>
    public static string Words(Reply reply) => reply.PlainText.ReplaceLineEndings("\n");

    private static void Fits(Reply reply)
    {
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, $"{LineBudget.Of(reply)} lines:\n{reply.PlainText}");
        Assert.All(reply.Buttons, button => Assert.InRange(button.Label.Length, 1, 20));
    }

    private static double Units(Amount amount) => amount switch
    {
        Amount.ByVolume volume => Math.Round(volume.Volume.Millilitres, 3),
        Amount.ByMass mass => Math.Round(mass.Mass.Grams, 3),
        Amount.ByCount count => count.Count,
        _ => throw new InvalidOperationException("An amount is one of three."),
    };

    private static string Named(Account account, Records.StudioView view) => account switch
    {
        Account.OfMember member => view.Members.Names()[member.MemberId],
        Account.OfKitty => "kitty",
        _ => "studio",
    };
}
