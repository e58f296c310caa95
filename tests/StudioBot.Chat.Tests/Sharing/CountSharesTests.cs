using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>What a count gives back and what it charges. Sums are worked by hand: pearl ink is bought at 20.00 a litre.
/// That nobody gains by counting, and that a find gives back no more than was charged, is common practice.</summary>
public sealed class CountSharesTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public CountSharesTests()
    {
        Says("material new pearl ink 1 L");
        Says("bought 1 L pearl ink 20.00", "Pia");
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_find_gives_back_no_more_than_use_was_charged()
    {
        Says("used 200 ml pearl ink");
        Assert.Equal(-400, Cents("Mira"));

        Assert.Contains("4.00 given back by use; 20.00 found stays with the studio", Says("count pearl ink 2 L", agreed: true), StringComparison.Ordinal);
        Assert.Equal(0, Cents("Mira"));
        Assert.Equal(2000, Cents("Pia"));
    }

    [Fact]
    public void Two_counts_make_nobody_any_money()
    {
        Says("used 700 ml pearl ink");
        Says("count pearl ink 100 L", "Pia", agreed: true);
        Says("count pearl ink 1 ml", "Pia");

        // As one count that missed 299 ml: 5.98, by use.
        Assert.Equal(-1400 - 598, Cents("Mira"));
        Assert.Equal(2000, Cents("Pia"));
    }

    [Fact]
    public void Who_was_given_back_bears_it_again_whoever_used_since()
    {
        Says("used 200 ml pearl ink", "Pia");
        Says("count pearl ink 900 ml", "Pia");   // 100 ml over: 2.00 back
        Says("used 500 ml pearl ink");
        Says("count pearl ink 300 ml", "Pia");   // 100 ml missing

        Assert.Equal(2000 - 400, Cents("Pia"));
        Assert.Equal(-1000, Cents("Mira"));
    }

    [Fact]
    public void What_stayed_with_the_studio_goes_first_when_it_is_missing_again_in_two_steps()
    {
        Says("count pearl ink 1.9 L", "Pia");   // nobody used of it: 18.00 for the studio
        Says("used 100 ml pearl ink");
        Says("count pearl ink 1.7 L", "Pia");
        Says("used 100 ml pearl ink");
        Says("count pearl ink 800 ml", "Pia");

        Assert.Equal(-400, Cents("Mira"));
        Assert.Equal(2000, Cents("Pia"));
    }

    [Fact]
    public void Who_bore_a_slip_of_a_count_gets_it_back_whoever_used_since()
    {
        Says("used 200 ml pearl ink");
        Says("count pearl ink 80 ml");   // a slip for 800: 14.40
        Assert.Equal(-400 - 1440, Cents("Mira"));
        Says("used 10 ml pearl ink", "Pia");
        Says("count pearl ink 790 ml", "Pia", agreed: true);

        Assert.Equal(-400, Cents("Mira"));
        Assert.Equal(2000 - 20, Cents("Pia"));
    }

    [Fact]
    public void What_was_found_to_be_used_is_paid_by_who_uses_it()
    {
        Says("used 1 L pearl ink");
        Says("used 200 ml pearl ink anyway");

        Assert.Equal(-2400, Cents("Mira"));
    }

    [Fact]
    public void A_count_that_puts_another_right_can_be_taken_back()
    {
        Says("used 300 ml pearl ink");
        Says("count pearl ink 500 ml");
        var before = State();
        Says("count pearl ink 650 ml", "Pia");
        Says("undo", "Pia");

        Assert.Equal(before, State());
        Says("count pearl ink 700 ml", "Pia");
        Assert.Equal(-600, Cents("Mira"));
    }

    [Theory]
    [InlineData("use", 1)]
    [InlineData("use", 2)]
    [InlineData("use", 3)]
    [InlineData("equal", 4)]
    [InlineData("equal", 5)]
    [InlineData("nobody", 6)]
    public void Counts_alone_that_end_where_they_began_move_nobody(string rule, int seed)
    {
        var random = new Random(seed);
        Says($"studio sharing {rule}");
        Says("used 133 ml pearl ink", "Pia");
        Says("count pearl ink 859 ml");
        Says("bought 700 ml pearl ink 9.99");
        Says("used 61 ml pearl ink");
        Says("used 29 ml pearl ink", "Pia");
        var level = studio.Level("pearl ink");
        var before = State();
        for (var time = 0; time < 8; time++)
        {
            Says($"count pearl ink {random.Next(0, 5000)} ml", random.Next(2) == 0 ? "Mira" : "Pia", agreed: true);
            Assert.Equal(0, studio.Look(view => view.Money.Balances()).Sum(line => line.Sum.Cents));
        }

        Says($"count pearl ink {level} ml", agreed: true);

        Assert.Equal(before, State());
    }

    [Theory]
    [InlineData("count 100000 ml pearl ink")]   // more than ever came
    [InlineData("count 700 ml pearl ink")]      // over five times the level
    public void An_absurd_count_is_asked_about(string words)
    {
        Says("used 900 ml pearl ink");
        var before = State();

        var asked = studio.Say(words);
        Assert.True(asked.Reply.IsTrouble);
        Assert.Contains(asked.Reply.Buttons, button => button.Agrees && button.Line == words);
        Assert.Equal(before, State());

        Says(words, agreed: true);
        Assert.NotEqual(before, State());
    }

    // Accounts, and what each lot holds and is worth.
    private string State() => studio.Look(view => string.Join('\n', view.Money.Balances().Select(line => $"{line}")
        .Concat(view.Stock.Holding().GroupBy(line => line.LotId).OrderBy(lot => lot.Key).Select(lot =>
            $"{lot.Key}: {lot.Sum(line => (line.Fills ? 1 : -1) * line.Worth.Cents)}"))
        .Concat(view.Materials.Levels().Select(level => $"{level}"))));

    private string Says(string words, string by = "Mira", bool agreed = false)
    {
        studio.Now += TimeSpan.FromMinutes(5);
        var outcome = studio.Say(words, by, agreed);
        Assert.False(outcome.Reply.IsTrouble, outcome.Reply.PlainText);
        return outcome.Reply.PlainText;
    }

    private long Cents(string name) => studio.Look(view =>
    {
        var account = new Account.OfMember(view.Members.All().First(member => member.Name == name).Id);
        return (view.Money.Balances().FirstOrDefault(line => line.Account == account)?.Sum ?? default(Money)).Cents;
    });
}
