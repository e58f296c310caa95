using System.Globalization;
using System.IO.Compression;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Tests.Exporting;

public sealed class ExportCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public ExportCommandTests()
    {
        studio.Tells("bought 500 ml white 24.90 lot W-1");
        studio.Tells("used 20 ml white", "Pia");
        studio.Tells("used 30 ml white");
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_use_is_a_row_with_the_studio_s_own_time()
    {
        var rows = Rows(File("export usage 2026-11"));

        Assert.Equal(["happened_at", "member", "material", "lot", "reason", "quantity", "unit", "value", "currency", "act"], rows[0]);
        Assert.Equal(3, rows.Count);
        Assert.Equal(["2026-11-25T10:00:00+01:00", "Pia", "white", "W-1", "used", "20", "ml"], rows[1][..7]);     // 9:00 UTC in Vienna
    }

    [Fact]
    public void It_begins_with_the_mark_of_byte_order_once()
    {
        var file = File("export usage");
        Assert.Equal(Encoding.UTF8.GetPreamble(), file.Content[..3]);
        Assert.Equal("usage.csv", file.Name);
        Assert.NotEqual(Encoding.UTF8.GetPreamble(), file.Content[3..6]);
    }

    [Fact]
    public void Another_month_has_no_file()
    {
        var reply = studio.Say("export usage 2026-10").Reply;
        Assert.Null(reply.File);
        Assert.StartsWith("Nothing to export: usage is empty in 2026-10", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Sums_of_others_are_for_stewards()
    {
        Lends();
        Assert.Equal(4, Rows(File("export money")).Count(row => row[5] == "bill"));     // two members' and twice the kitty's
        Assert.All(Rows(File("export money", "Pia"))[1..], row => Assert.Equal("Pia", row[2]));
        var usage = Rows(File("export usage", "Pia"));
        Assert.All(usage[1..].Where(row => row[1] == "Mira"), row => Assert.Equal(("", ""), (row[7], row[8])));
    }

    [Fact]
    public void In_a_group_there_is_no_money()
    {
        Lends();
        var refused = studio.Say("/export money", chat: ChatKind.Group).Reply;
        Assert.Equal("Money goes out in private only\nAnybody may read a group. Write to me in private:\n  export money", Shelves.Words(refused));
        Assert.True(refused.IsTrouble);
        Assert.Null(refused.File);

        Assert.All(Rows(studio.Say("/export usage", chat: ChatKind.Group).Reply.File!)[1..], row => Assert.Equal("", row[7]));
        Assert.DoesNotContain("money.csv", Names(studio.Say("/export all", chat: ChatKind.Group).Reply.File!));
    }

    [Fact]
    public void All_is_the_four_in_one()
    {
        var file = File("export all");
        Assert.Equal(("studio.zip", "application/zip"), (file.Name, file.MediaType));
        Assert.Equal(["usage.csv", "money.csv", "pieces.csv", "stock.csv"], Names(file));
    }

    [Fact]
    public void The_stock_is_a_row_a_lot_to_the_last_microlitre_and_cent()
    {
        var rows = Rows(File("export stock"));
        Assert.Equal(["white", "liquid", "W-1", "2026-11-25T10:00:00+01:00", "500", "450", "ml", "24.90"], Assert.Single(rows[1..])[..8]);
    }

    [Theory]
    [InlineData("=HYPERLINK(\"http://x\")")]
    [InlineData("\u00A0+1")]
    [InlineData("a\n@b, \"c\"")]
    [InlineData("＝1")]
    public void What_somebody_wrote_comes_back_and_is_no_formula(string hostile)
    {
        studio.File.Write(session =>
        {
            var mira = session.Members.All()[0];
            var act = session.Acts.Begin(new NewAct("bill", mira, hostile, studio.Now));
            session.Money.Book(act, [new(new Account.OfMember(mira.Id), new Money(1)), new(new Account.OfStudio(), new Money(-1))]);
            session.Stock.Stop(session.Lots.All()[0].Id, hostile, act);
        });

        var words = Rows(File("export money")).First(row => row[5] == "bill")[6];
        Assert.Equal(hostile, StudioBot.Chat.Exporting.FormulaShield.Take(words));
        Assert.NotEqual(hostile, words);
        Assert.Equal(words, Rows(File("export stock"))[1][12]);
    }

    [Fact]
    public void Nothing_tells_a_chat_or_an_account()
    {
        studio.Say("/used 1 ml white", chat: ChatKind.Group, by: "Pia");
        var all = string.Concat(File("export usage").Content.Select(one => (char)one));
        Assert.DoesNotContain("-100", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reply_fits_a_phone() =>
        Assert.True(LineBudget.Of(studio.Say("export all", "Pia").Reply) <= LineBudget.Lines);

    // Pia owes Mira's kitty something, whatever else the purchase booked.
    private void Lends() => studio.File.Write(session =>
    {
        var members = session.Members.All();
        foreach (var member in members)
        {
            var act = session.Acts.Begin(new NewAct("bill", member, "bill", studio.Now));
            session.Money.Book(act, [new(new Account.OfMember(member.Id), new Money(5)), new(new Account.OfKitty(), new Money(-5))]);
        }
    });

    private ReplyFile File(string words, string by = "Mira") => studio.Say(words, by).Reply.File
        ?? throw new InvalidOperationException($"“{words}” brought no file.");

    private static List<string> Names(ReplyFile file)
    {
        using var zip = new ZipArchive(new MemoryStream(file.Content));
        return [.. zip.Entries.Select(entry => entry.FullName)];
    }

    private static List<string[]> Rows(ReplyFile file)
    {
        using var csv = new CsvParser(
            new StreamReader(new MemoryStream(file.Content)),
            new CsvConfiguration(CultureInfo.InvariantCulture) { HasHeaderRecord = false });
        List<string[]> rows = [];
        while (csv.Read())
        {
            rows.Add([.. csv.Record!]);
        }

        return rows;
    }
}
