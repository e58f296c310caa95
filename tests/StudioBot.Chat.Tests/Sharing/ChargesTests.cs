using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>What leaves the shelf is charged at what it had cost. Sums are worked by hand from the invented studio: both
/// lots of white cost 17.50 for 1 L; shares are the largest remainders (handbook of apportionment: Hamilton).</summary>
public sealed class ChargesTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Who_uses_it_pays_what_it_had_cost()
    {
        studio.Tells("used 200 ml white");   // 40 + 160 ml

        Assert.Equal(new Money(-350), Sum(new Account.OfMember(Mira)));
        Assert.Equal(new Money(350), Sum(new Account.OfStudio()));
    }

    [Fact]
    public void Undo_gives_it_back()
    {
        studio.Tells("used 200 ml white");
        studio.Hear("undo");

        Assert.Empty(Balances());
    }

    [Fact]
    public void All_of_a_lot_is_all_of_its_cents_however_it_was_taken()
    {
        studio.Tells("material new pearl ink 300 ml");
        studio.Tells("bought 300 ml pearl ink 1.00 lot P-1");
        for (var time = 0; time < 3; time++)
        {
            studio.Now += TimeSpan.FromMinutes(5);
            studio.Tells("used 100 ml pearl ink");
        }

        Assert.Empty(Balances());
    }

    [Fact]
    public void A_mixture_costs_what_its_parts_did()
    {
        studio.Tells("mix medium 400 ml");
        Assert.Empty(Balances());

        studio.Tells("count medium 400 ml");   // the opened lots had no price: what is left is batch 14
        Assert.Empty(Balances());
        studio.Now += TimeSpan.FromMinutes(5);
        studio.Tells("used 200 ml medium");

        Assert.Equal(new Money(-264), Sum(new Account.OfMember(Mira)));   // half of 5.27
    }

    [Theory]
    [InlineData("studio sharing equal", true)]
    [InlineData("studio sharing nobody", false)]
    public void What_a_count_finds_missing_is_borne_by_the_rule(string rule, bool isBorne)
    {
        studio.Tells(rule);
        studio.Tells("count white 430 ml");

        var members = Balances().Where(line => line.Account is Account.OfMember).ToList();
        if (isBorne)
        {
            var count = studio.Look(view => view.Members.All()).Count;
            Assert.Equal(new Money(-683).Split([.. Enumerable.Repeat(1m, count)]), members.Select(line => line.Sum));
        }
        else
        {
            Assert.Empty(members);
        }
    }

    [Fact]
    public void By_use_bears_who_used_of_it_since_the_last_count()
    {
        studio.Tells("used 100 ml white");
        var before = Sum(new Account.OfMember(Mira));
        studio.Tells("count white 330 ml");   // 390 ml of W-2 less: 6.83

        Assert.Equal(new Money(-683), Sum(new Account.OfMember(Mira)) - before);
    }

    [Fact]
    public void What_was_taken_back_weighs_nothing_whoever_took_it_back()
    {
        studio.Hear("used 100 ml white", "Pia");
        studio.Now += TimeSpan.FromMinutes(5);
        studio.Tells("used 100 ml white");
        studio.Now += TimeSpan.FromMinutes(5);
        var pias = studio.Look(view => view.Acts.Recent(null, studio.Now)).First(act => act.Author?.Name == "Pia");
        studio.Hear($"undo act {pias.Id}");   // by Mira, a steward
        var before = Sum(new Account.OfMember(Mira));

        studio.Tells("count white 330 ml");   // 820 − 100 − 330 = 390 ml less: 6.83, all of it Mira's

        Assert.Equal(new Money(-683), Sum(new Account.OfMember(Mira)) - before);
        Assert.Equal(default, Sum(new Account.OfMember(studio.Look(view => view.Members.All()).First(one => one.Name == "Pia").Id)));
    }

    [Fact]
    public void What_is_shared_is_borne_by_all()
    {
        studio.Tells("material glove shared");
        studio.Tells("studio sharing equal");
        studio.Tells("used 8 gloves");   // 12.50 for 100

        var members = Balances().Where(line => line.Account is Account.OfMember).ToList();
        Assert.Equal(-100, members.Sum(line => line.Sum.Cents));
        Assert.Equal(studio.Look(view => view.Members.All()).Count, members.Count);
    }

    private long Mira => studio.Look(view => view.Members.All()).First(member => member.Name == "Mira").Id;

    private Money Sum(Account account) =>
        Balances().FirstOrDefault(line => line.Account == account)?.Sum ?? default;

    private IReadOnlyList<MoneyLine> Balances() => studio.Look(view => view.Money.Balances());
}
