using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>The invented studio has 26 tiles 10cm and 88 cups.</summary>
public sealed class ReserveCommandTests : IDisposable
{
    private const string Saturday = "reserve sat 10:00 8 people 2 tiles 10cm 5 colours";

    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void The_question_has_a_button_that_reserves()
    {
        var button = _studio.Say("workshop sat 10:00 8 people 2 tiles 10cm 5 colours").Reply.Buttons
            .Single(one => one.Label == "Reserve it");

        Assert.True(button.Records);
        Assert.StartsWith("Reserved for Sat 28 Nov 10:00, 8 people.", _studio.Tells(button.Line), StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_takes_is_set_aside_and_the_level_stays()
    {
        _studio.Tells(Saturday);

        // Worked by hand: 8 people with 2 tiles each are 16 of 26.
        Assert.StartsWith("Tile 10cm: 26 ", _studio.Hear("stock tile 10cm"), StringComparison.Ordinal);
        Assert.Contains("Reserved: 16 for Sat 28 Nov; 10 free.", _studio.Hear("stock tile 10cm"), StringComparison.Ordinal);
        Assert.Contains("Reserved: ", _studio.Hear("stock"), StringComparison.Ordinal);
        Assert.Equal(26, _studio.Level("tile 10cm"));
    }

    [Fact]
    public void Who_uses_what_is_set_aside_is_told()
    {
        _studio.Tells(Saturday);

        // Worked by hand: 16 of 26 are set aside, so 10 are free and the 12th leaves 2 too few.
        Assert.DoesNotContain("short", _studio.Tells("used 10 tiles 10cm"), StringComparison.Ordinal);
        _studio.Now = _studio.Now.AddMinutes(5);
        Assert.Contains("Workshops want 16 tile 10cm: 2 short.", _studio.Tells("used 2 tiles 10cm").Replace('\n', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void Once_it_began_it_reserves_nothing()
    {
        _studio.Tells(Saturday);
        _studio.Now = new DateTimeOffset(2026, 11, 28, 10, 0, 0, TimeSpan.Zero);

        Assert.DoesNotContain("Reserved", _studio.Hear("stock tile 10cm"), StringComparison.Ordinal);
        Assert.StartsWith("No workshop is reserved", _studio.Hear("workshops"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_it_takes_is_known_demand()
    {
        Assert.StartsWith("Tile 10cm: nothing to buy yet", _studio.Hear("buy tile 10cm"), StringComparison.Ordinal);

        // Worked by hand: 26 less 2 x 10 are 6, under the studio's low level of 10: up to 1.25 x 10 and 20 reserved,
        // so 12.5 - 26 + 20 = 6.5, and one pack of 20 at 19.00.
        _studio.Tells("reserve sat 10:00 10 people 2 tiles 10cm 5 colours");

        var said = _studio.Hear("buy tile 10cm");
        Assert.StartsWith("Buy tile 10cm: 1 x 20, 19.00 EUR", said, StringComparison.Ordinal);
        Assert.Matches("Reserved +20", said);
        Assert.Contains("Counts the workshop of Sat 28 Nov.", said.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains("For workshops:", Pages("buy"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_short_for_it_and_can_not_come_in_time_is_said_so()
    {
        _studio.Tells("reserve sat 10:00 14 people 2 tiles 10cm 5 colours");      // 28 of 26, in three days, and an order takes a week

        Assert.Contains(
            "Counts the workshop of Sat 28 Nov: an order may come too late for Sat 28 Nov.",
            _studio.Hear("buy tile 10cm").Replace('\n', ' '),
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_beyond_the_next_order_is_not_bought_for_yet()
    {
        // A week for the order and four weeks that it is to last (common practice): up to 30 December.
        _studio.Tells("reserve 2 jan 2027 10:00 10 people 2 tiles 10cm 5 colours");
        Assert.StartsWith("Tile 10cm: nothing to buy yet", _studio.Hear("buy tile 10cm"), StringComparison.Ordinal);

        _studio.Now += TimeSpan.FromDays(4);

        Assert.StartsWith("Buy tile 10cm", _studio.Hear("buy tile 10cm"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_short_is_said_and_pinged()
    {
        _studio.File.Write(session =>
            session.Members.AddAccount(501, session.Members.All().Single(one => one.Name == "Mira").Id, _studio.Now));

        var said = _studio.Tells("reserve sat 10:00 14 people 2 tiles 10cm 5 colours", "Pia");

        Assert.Contains("tile 10cm 2", said[said.IndexOf("Short then:", StringComparison.Ordinal)..].Replace('\n', ' '), StringComparison.Ordinal);
        _studio.Now += TimeSpan.FromMinutes(15);
        Assert.Contains("Tile 10cm is 2 short of what is reserved: buy 1 x 20", Assert.Single(_studio.Ring()).Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Taken_back_it_reserves_nothing()
    {
        _studio.Tells(Saturday);
        Assert.True(_studio.Say("undo").Recorded);

        Assert.DoesNotContain("Reserved", _studio.Hear("stock tile 10cm"), StringComparison.Ordinal);
    }

    [Fact]
    public void It_asks_when_it_starts()
    {
        var reply = _studio.Refuses("reserve 8 people 2 tiles 10cm 5 colours");

        Assert.StartsWith("When does it start? Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("reserve sat 10:00 8 people", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_needs_its_hour()
    {
        var reply = _studio.Refuses("reserve 28 nov 8 people 2 tiles 10cm 5 colours");

        Assert.StartsWith("At what hour of 28 Nov 2026? Nothing recorded.", Shelves.Words(reply).Replace('\n', ' '), StringComparison.Ordinal);
        Assert.StartsWith("Reserved for Sat 28 Nov 10:00", _studio.Tells(Shelves.Words(reply).Split('\n')[^1].Trim()), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_over_is_not_reserved() =>
        Assert.Contains(
            "is over. Nothing recorded.",
            Shelves.Words(_studio.Refuses("reserve today 8:00 8 people 2 tiles 10cm")).Replace('\n', ' '),
            StringComparison.Ordinal);

    [Fact]
    public void A_second_one_at_the_same_hour_is_agreed_to_first()
    {
        _studio.Tells(Saturday);

        var doubt = _studio.Refuses("reserve sat 10:00 2 people 1 tile 10cm 5 colours").Buttons[0];

        Assert.True(doubt.Agrees);
        _studio.Tells(doubt.Line, agreed: true);
        Assert.StartsWith("2 workshops to come", _studio.Hear("workshops"), StringComparison.Ordinal);
    }

    [Fact]
    public void Workshops_are_listed_with_what_they_take_and_cancelled_by_a_button()
    {
        _studio.Tells(Saturday);

        var reply = _studio.Say("workshops").Reply;
        Assert.StartsWith("1 workshop to come\nSat 28 Nov 10:00, 8 people:\n", Shelves.Words(reply), StringComparison.Ordinal);
        Assert.Matches("tile 10cm +16", Pages("workshops"));
        Assert.True(_studio.Say(reply.Buttons.Single(one => one.Label == "Cancel Sat 28 Nov").Line).Recorded);

        Assert.StartsWith("No workshop is reserved", _studio.Hear("workshops"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_others_reserved_is_not_there_for_the_next()
    {
        Assert.DoesNotContain("tile 10cm", _studio.Hear("workshop 5 people 2 tiles 10cm 5 colours shopping").Split("of")[0], StringComparison.Ordinal);
        _studio.Tells(Saturday);
        _studio.Tells("reserve sun 10:00 2 people 2 tiles 10cm 5 colours");

        // 26 less 16 and 4 are 6 of the 10 that it takes.
        Assert.Matches("tile 10cm +1 x 20", _studio.Hear("workshop 5 people 2 tiles 10cm 5 colours shopping"));
    }

    [Theory]
    [InlineData("workshops")]
    [InlineData("reservations")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    private string Pages(string line)
    {
        var text = "";
        for (string? next = line; next is not null;)
        {
            var reply = _studio.Say(next).Reply;
            text += Shelves.Words(reply);
            next = reply.Buttons.FirstOrDefault(button => button.Label == "More")?.Line;
        }

        return text;
    }
}
