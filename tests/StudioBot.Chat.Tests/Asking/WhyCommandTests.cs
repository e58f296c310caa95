using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class WhyCommandTests
{
    [Fact]
    public void Causes_come_likeliest_first_with_what_to_change()
    {
        var text = Sample.Answer("why cracks")!.PlainText;

        Assert.Contains("1. Too thick: the skin dries over wet paint. Pour thinner", text, StringComparison.Ordinal);
        Assert.Contains("Common practice", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_room_that_is_warm_and_dry_enough_puts_the_cold_and_the_damp_last()
    {
        // the invented studio stands at 20 °C and 55 %: neither cold nor damp (common practice)
        var lines = Sample.Answer("why does it dry so slow this week")!.Blocks.OfType<Block.Line>().Select(line => line.Text).ToList();

        Assert.StartsWith("1. Thick film", lines[0], StringComparison.Ordinal);
        Assert.DoesNotContain(lines.Take(2), line => line.Contains("Damp air", StringComparison.Ordinal));
        Assert.DoesNotContain(lines.Take(2), line => line.Contains("Cold room", StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_brings_what_its_record_says()
    {
        var text = Sample.Answer("why 13 muddy")!.PlainText;

        Assert.Contains("Too many colours for the surface. Three or four, light beside dark. Its record speaks for it.", text, StringComparison.Ordinal);
        Assert.Contains("13: bloom, 6 colours, 480 ml on 1600 cm²", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_touches_resin_is_cautioned() =>
        Assert.Contains("Gloves", Sample.Answer("why is my resin sticky")!.PlainText, StringComparison.Ordinal);

    [Fact]
    public void Every_cause_is_on_the_first_page_or_behind_its_buttons()
    {
        foreach (var fault in Sample.Studio.Practice.Faults)
        {
            var text = "";
            for (string? line = $"why {fault.Name}"; line is not null;)
            {
                var reply = Sample.Answer(line)!;
                text += reply.PlainText;
                line = reply.Buttons.FirstOrDefault(button => button.Label == "More causes")?.Line;
            }

            Assert.All(fault.Causes, cause => Assert.Contains(cause.Why, text, StringComparison.Ordinal));
        }
    }
}
