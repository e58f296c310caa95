using System.Globalization;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Ticks;
using StudioBot.Records;
using StudioBot.Records.Acts;

namespace StudioBot.Host.Tests.Ticks;

public sealed class DueRemindersTests : IDisposable
{
    private const long Nora = 7;
    private const long Pia = 8;

    // Ten in Vienna, a Wednesday in winter.
    private static readonly DateTimeOffset Ten = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile file = StudioFile.OpenInMemory();
    private long requests;

    public DueRemindersTests() => Studios.Found(file, Ten.AddDays(-60), (Nora, "Nora"), (Pia, "Pia"));

    public void Dispose() => file.Dispose();

    [Fact]
    public void What_is_due_is_said_to_whom_asked_and_once()
    {
        Ask(Nora, "stir the black", Ten);
        Assert.Equal(0, Say(Ten.AddSeconds(-1)));
        Assert.Equal(1, Say(Ten));
        Assert.Equal(0, Say(Ten.AddSeconds(2)));
        var (chat, letter) = Assert.Single(Posted());
        Assert.Equal(Nora, chat);
        Assert.Equal("You asked for it: stir the black.", letter.Plain);
        Assert.True(letter.ByItself);
    }

    [Fact]
    public void Five_hundred_at_once_in_one_chat_become_at_most_five_messages()
    {
        for (var count = 0; count < 500; count++)
        {
            Ask(Nora, $"thing {count}", Ten.AddSeconds(-count));
        }

        Say(Ten);
        var posted = Posted();
        Assert.InRange(posted.Count, 1, 5);
        Assert.All(posted, one => Assert.Equal(Nora, one.Chat));
        Assert.Equal(0, Waiting());
    }

    [Fact]
    public void Five_hundred_of_many_kinds_at_once_become_at_most_five_messages()
    {
        for (var piece = 0; piece < 100; piece++)
        {
            Speak(Nora, "pour 30cm panel bloom 6 colours", Ten.AddDays(-30).AddMinutes(2 * piece));
        }

        for (var first = 1; first <= 100; first += 10)
        {
            var pieces = string.Join(' ', Enumerable.Range(first, 10));
            Speak(Nora, $"coat {pieces} 1.5 L 2:1", Ten.AddMinutes(-40), isAgreed: true);
        }

        var at = file.Write(session => session.Reminders.NextDue());
        for (var count = 0; count < 300; count++)
        {
            Ask(Nora, $"thing {count}", at!.Value);
        }

        var kinds = file.Read(view => view.Reminders.Due(Ten, 1000)).GroupBy(one => one.What.Kind).Count();
        Assert.InRange(kinds, 2, 10);
        Say(Ten);
        Assert.InRange(Posted().Count, 2, 5);
    }

    [Theory]
    [InlineData(9)]
    [InlineData(30 * 24)]
    public void A_long_silence_becomes_one_digest_of_what_holds_now(int hours)
    {
        var began = Ten.AddHours(-1);
        for (var count = 0; count < 8; count++)
        {
            Ask(Nora, $"thing {count}", began + count * TimeSpan.FromHours(hours) / 9);
        }

        var withdrawn = Ask(Nora, "nothing any more", began.AddHours(1));
        file.Write(session => session.Studio.Set($"request {requests}", null, withdrawn));
        Say(began + TimeSpan.FromHours(hours));
        var (_, letter) = Assert.Single(Posted());
        Assert.StartsWith("This comes late", letter.Plain, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(0, 8), count =>
            Assert.Contains($"thing {count}", letter.Plain, StringComparison.Ordinal));
        Assert.DoesNotContain("nothing any more", letter.Plain, StringComparison.Ordinal);
        Assert.Equal(0, Waiting());
    }

    [Fact]
    public void Who_has_left_gets_none()
    {
        Ask(Pia, "stir the black", Ten);
        file.Write(session =>
        {
            var pia = session.Members.ByAccount(Pia)!;
            session.Members.Leave(pia.Id, session.Acts.Begin(new NewAct("leave", pia, "leave", Ten.AddHours(-1))));
        });
        Assert.Equal(0, Say(Ten));
        Assert.Empty(Posted());
        Assert.Equal(0, Waiting());
    }

    [Theory]
    [InlineData(22, 0)]
    [InlineData(23, 30)]
    [InlineData(3, 15)]
    [InlineData(7, 59)]
    public void What_falls_into_quiet_hours_is_held_until_the_morning_and_then_on_time(int hour, int minute)
    {
        // From 22:00 to 8:00 unless somebody says otherwise; Vienna is an hour ahead of UTC in winter.
        var evening = new DateTimeOffset(2026, 11, 25, 22, 0, 0, TimeSpan.FromHours(1));
        var due = evening.AddHours((hour - 22 + 24) % 24).AddMinutes(minute);
        var morning = evening.AddHours(10);
        Ask(Nora, "stir the black", due);
        Assert.Equal(0, Say(due));
        Assert.Equal(0, Say(morning.AddMinutes(-1)));
        Assert.Equal(1, Say(morning));
        var (_, letter) = Assert.Single(Posted());
        Assert.Equal("You asked for it: stir the black.", letter.Plain);
    }

    [Fact]
    public void A_few_minutes_late_it_says_by_how_much()
    {
        Ask(Nora, "stir the black", Ten);
        Say(Ten.AddMinutes(10));
        Assert.Contains("10 min late", Assert.Single(Posted()).Letter.Plain, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reminder_is_put_and_settled_in_one_commit()
    {
        Ask(Nora, "stir the black", Ten);
        var dying = new DueReminders(
            file, Studios.Practice, beforeCommit: () => throw new InvalidOperationException("dead"));
        Assert.Throws<InvalidOperationException>(() => dying.Say(Ten));
        Assert.Empty(Posted());
        Assert.Equal(1, Waiting());

        Assert.Equal(1, Say(Ten.AddSeconds(2)));
        Assert.Equal(0, Say(Ten.AddSeconds(4)));
        Assert.Single(Posted());
    }

    [Fact]
    public void What_nobody_wants_is_settled_without_a_word()
    {
        var act = Ask(Nora, "stir the black", Ten);
        file.Write(session => session.Undo.Take(act.Id, new NewAct("undo", null, "undo", Ten.AddMinutes(-1))));
        Assert.Equal(0, Say(Ten));
        Assert.Empty(Posted());
        Assert.Equal(0, Waiting());
    }

    private int Say(DateTimeOffset now) => new DueReminders(file, Studios.Practice).Say(now);

    // Beside the coming week, whose row always waits.
    private int Waiting() => file.Read(view =>
        view.Reminders.Due(DateTimeOffset.MaxValue, 1000).Count(row => row.What.Civil is null));

    private Act Ask(long account, string words, DateTimeOffset at) => file.Write(session =>
        Requests.Ask(session, session.Members.ByAccount(account)!, ++requests, words, at, at.AddDays(-1)));

    private void Speak(long account, string words, DateTimeOffset at, bool isAgreed = false)
    {
        var message = new ChatMessage(account, StudioBot.Chat.ChatKind.Private, 1, account, "Nora", words, at)
        {
            IsAgreed = isAgreed,
        };
        var outcome = file.Write(session => Studios.Answering().To(message, session));
        Assert.True(outcome?.Recorded, string.Create(CultureInfo.InvariantCulture, $"{words}: {outcome?.Reply.PlainText}"));
    }

    // Claims whatever waits, as a sender would.
    private List<(long Chat, Letter Letter)> Posted()
    {
        var posted = new List<(long, Letter)>();
        while (file.Write(session => session.Post.Claim(Ten.AddYears(1))) is { } post)
        {
            posted.Add((post.ChatId, LetterText.Read(post.Payload)));
            file.Write(session => session.Post.Sent(post.Id, Ten, post.Id));
        }

        return posted;
    }
}
