using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

public sealed class LabelCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_label_comes_as_a_sheet_to_print_and_in_other_forms_by_a_button()
    {
        var reply = studio.Say("label 17").Reply;
        Assert.Equal(("labels-17.pdf", "application/pdf"), (reply.File!.Name, reply.File.MediaType));
        Assert.Equal(["label 17 letter", "label 17 picture"], reply.Buttons.Select(button => button.Line));
        Assert.Equal("labels-17.pdf", studio.Say("label 17 letter").Reply.File!.Name);
        Assert.True(studio.Say("label 17 picture").Reply.File!.IsPicture);
    }

    [Fact]
    public void Several_are_one_sheet_each_once()
    {
        var reply = studio.Say("label 17 18 17").Reply;
        Assert.StartsWith("2 labels", reply.PlainText);
        Assert.Equal("labels-17-to-18.pdf", reply.File!.Name);
    }

    [Fact]
    public void A_picture_of_more_than_can_be_read_is_refused_with_the_sheet()
    {
        var numbers = string.Join(' ', studio.Look(view => view.Pieces.Numbers()).Take(7));
        var reply = studio.Say($"label {numbers} picture").Reply;
        Assert.True(reply.IsTrouble);
        Assert.Contains($"label {numbers}", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_code_opens_the_piece_in_the_chat() =>
        Assert.Equal(studio.Hear("piece 17"), studio.Hear("/start piece-17"));

    // Whoever prints a code of their own can have nothing recorded by it.
    [Theory]
    [InlineData("/start bin-17")]
    [InlineData("/start piece-17-bin")]
    [InlineData("/start piece--17")]
    [InlineData("/start piece-999999999999")]
    public void A_code_that_says_anything_else_records_nothing(string words)
    {
        Assert.False(studio.Say(words).Recorded);
        Assert.NotEqual(studio.Hear("piece 17"), studio.Hear(words));
    }
}
