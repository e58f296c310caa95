using StudioBot.Chat.Replies;
using StudioBot.Host.Sending;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Tests.Turns;

public sealed class PostingTests : IDisposable
{
    private const long Nora = 7;

    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private static readonly ReplyFile Table = new("usage.csv", "text/csv", [1, 2, 3]);

    private readonly StudioFile file = StudioFile.OpenInMemory();

    public void Dispose() => file.Dispose();

    [Fact]
    public void A_file_takes_words_that_fit_its_caption_and_their_buttons()
    {
        var letter = Assert.Single(Put(new string('x', 1024)));
        Assert.Equal((1024, "usage.csv", 1), (letter.Plain.Length, letter.File!.Name, letter.Keys.Count));
    }

    [Fact]
    public void A_file_follows_words_that_do_not_and_the_buttons_stay_with_the_words()
    {
        var letters = Put(new string('x', 1025));
        Assert.Equal(2, letters.Count);
        Assert.Equal((1025, null, 1), (letters[0].Plain.Length, letters[0].File, letters[0].Keys.Count));
        Assert.Equal(("", "usage.csv", 0), (letters[1].Plain, letters[1].File!.Name, letters[1].Keys.Count));
    }

    [Fact]
    public void Words_whose_picture_can_not_be_drawn_go_out_alone_and_say_so()
    {
        var reply = new Reply([new Block.Line("17")], [])
        {
            File = ReplyFile.Picture("piece-17.png", () => throw new DllNotFoundException("no letters here")),
        };
        file.Write(session => Posting.PutByItself(session, Nora, Nora, reply, Urgency.Reply, Now, onceKey: null));
        var letter = file.Write(session => Letter.Of(session.Post.Claim(Now)!, session.Post));
        Assert.Null(letter.File);
        Assert.Equal("17\n(Its picture could not be drawn: DllNotFoundException.)", letter.Plain);
    }

    [Fact]
    public void A_picture_is_drawn_when_it_is_put_and_not_before()
    {
        var drawn = 0;
        var reply = new Reply([new Block.Line("17")], [])
        {
            File = ReplyFile.Picture("piece-17.png", () => [(byte)++drawn]),
        };
        Assert.Equal(0, drawn);
        file.Write(session => Posting.PutByItself(session, Nora, Nora, reply, Urgency.Reply, Now, onceKey: null));
        var letter = file.Write(session => Letter.Of(session.Post.Claim(Now)!, session.Post));
        Assert.Equal((1, true, 1), (drawn, letter.BringsPicture, letter.File!.Content[0]));
    }

    [Fact]
    public void Its_bytes_are_not_in_the_text_of_the_post()
    {
        Posted("short");
        Assert.DoesNotContain("usage.csv", file.Write(session => session.Post.Claim(Now))!.Payload, StringComparison.Ordinal);
    }

    private void Posted(string words) => file.Write(session => Posting.PutByItself(
        session,
        Nora,
        Nora,
        new Reply([new Block.Line(words)], [new Button("Stock", "stock")]) { File = Table },
        Urgency.Reply,
        Now,
        onceKey: null));

    private List<Letter> Put(string words)
    {
        Posted(words);
        return file.Write(session =>
        {
            List<Letter> letters = [];
            while (session.Post.Claim(Now) is { } post)
            {
                letters.Add(Letter.Of(post, session.Post));
                session.Post.Sent(post.Id, Now);
            }

            return letters;
        });
    }
}
