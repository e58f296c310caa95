using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class NoteCommandTests
{
    [Theory]
    [InlineData("note 17 <3 this one & that", "<3 this one & that")]
    [InlineData("note 17: why so dusty?", "why so dusty?")]
    [InlineData("17 fisheyes lower left", "fisheyes lower left")]
    [InlineData("note 17 a bit dull at the rim", "a bit dull at the rim")]
    [InlineData("note 17 panel warped", "panel warped")]
    public void Words_are_kept_as_typed(string words, string kept)
    {
        using var studio = LiveStudio.Sample();

        Assert.Equal($"Kept with 17.\n{kept}", studio.Hear(words));
        Assert.Equal(new PieceEvent.Note(kept), studio.Look(view => view.Pieces.Lines(17))[^1].What);
    }

    [Fact]
    public void A_photo_is_kept_with_its_caption()
    {
        using var studio = LiveStudio.Sample();

        Assert.StartsWith(
            "Photo kept with 17.", studio.Say("17 after 3 days", photo: "AgAC-17").Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(
            new PieceEvent.Photo("AgAC-17", "after 3 days"), studio.Look(view => view.Pieces.Lines(17))[^1].What);
    }
}
