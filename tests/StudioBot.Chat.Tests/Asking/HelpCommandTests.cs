using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class HelpCommandTests
{
    [Theory]
    [InlineData("help", ChatKind.Private)]
    [InlineData("/help", ChatKind.Group)]
    [InlineData("/start", ChatKind.Private)]
    public void Help_is_five_messages_that_work_here_today(string words, ChatKind chat)
    {
        var messages = Messages(Sample.Answer(words, chat)!);

        Assert.Equal(5, messages.Count);
        Assert.All(messages, message => Assert.Contains(Sample.Hear(message, chat).Kind, new[] { "ask", "write" }));
        Assert.All(messages, message => Assert.Equal(chat == ChatKind.Group, message.StartsWith('/')));
    }

    [Fact]
    public void Ones_own_last_piece_is_among_them() =>      // Mira poured 17 last
        Assert.Contains("again 17 on 40cm round", Messages(Sample.Answer("help")!));

    [Fact]
    public void Every_answered_command_of_a_room_stands_behind_its_button()
    {
        var asked = new HashSet<string>();
        for (string? line = Sample.Answer("help")!.Buttons.Single(button => button.Label == "Asking").Line; line is not null;)
        {
            var reply = Sample.Answer(line)!;
            asked.UnionWith(reply.Buttons.Select(button => button.Line));
            line = reply.Buttons.FirstOrDefault(button => button.Label == "More")?.Line;
        }

        var answered = Catalogue.Find().Forms.Where(form => form is Ask && form.Sheet.Room == Room.Asking && form.Sheet.Word != "help");
        Assert.All(answered, form => Assert.Contains($"help {form.Sheet.Word}", asked));
    }

    [Fact]
    public void Help_about_a_command_shows_examples_to_tap_and_its_other_words()
    {
        var reply = Sample.Answer("help again")!;

        Assert.StartsWith("Again: the recipe of a piece at a new size.", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("repeat, redo", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains(reply.Buttons, button => button.Line == "again 17 on 40cm round");
    }

    [Fact]
    public void Help_about_a_record_shows_how_and_has_no_button_that_records()
    {
        var reply = Sample.Answer("help used")!;

        Assert.Contains("used 20 ml white", Messages(reply));
        Assert.All(reply.Buttons, button => Assert.StartsWith("help", button.Line, StringComparison.Ordinal));
    }

    [Fact]
    public void Help_tells_more_where_there_is_room()
    {
        Assert.Contains("Rounded to the tools;", Sample.Answer("help scale")!.PlainText, StringComparison.Ordinal);

        var full = Catalogue.Find().Forms.Where(form => form.Sheet.More.Length > 0)
            .Count(form => !Sample.Answer($"help {form.Sheet.Word}")!.PlainText.Contains(form.Sheet.More, StringComparison.Ordinal));
        Assert.InRange(full, 0, Catalogue.Find().Forms.Count(form => form.Sheet.More.Length > 0) / 2);
    }

    [Fact]
    public void Help_about_any_command_fits_a_phone() =>
        Assert.All(Catalogue.Find().Forms.Select(form => form.Sheet.Word).Distinct(), word =>
            Assert.InRange(LineBudget.Of(Sample.Answer($"help {word}")!), 1, LineBudget.Lines));

    [Fact]
    public void Help_about_a_word_of_many_forms_begins_with_what_it_means_alone()
    {
        Assert.StartsWith("Studio: what the studio has set", Sample.Answer("help studio")!.PlainText, StringComparison.Ordinal);
        Assert.Contains(
            ("studio", "What the studio has set, and how the bot is."), Catalogue.Find().Menu(ChatKind.Private, isSteward: true));
    }

    private static List<string> Messages(Reply reply) => [.. reply.Blocks.OfType<Block.Sample>().Select(sample => sample.Text)];
}
