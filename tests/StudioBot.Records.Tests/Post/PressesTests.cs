using Microsoft.Data.Sqlite;
using StudioBot.Records.Post;

namespace StudioBot.Records.Tests.Post;

public sealed class PressesTests : IDisposable
{
    private const string Key = "q7Zt0sK3xW9bVn2L";
    private const long Mira = 7001;
    private const long Pia = 7002;
    private const long Chat = 5;

    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly TemporaryStudio studio = new();

    public PressesTests() => studio.File.Write(session =>
        session.Presses.Put(new Press(Key, Mira, Chat, "coat 17 180 ml 2:1", Morning.AddHours(1))));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Its_owner_says_its_line_by_pressing_and_only_once()
    {
        Assert.Equal(new PressVerdict.Said("coat 17 180 ml 2:1"), Use());
        Assert.Equal(new PressVerdict.UsedBefore(), Use());
    }

    [Fact]
    public void Somebody_else_says_nothing_and_uses_nothing_up()
    {
        Assert.Equal(new PressVerdict.SomebodyElses(), Use(user: Pia));
        Assert.IsType<PressVerdict.Said>(Use());
    }

    [Fact]
    public void It_counts_in_its_own_chat_only()
    {
        Assert.Equal(new PressVerdict.Unknown(), Use(chat: 6));
        Assert.IsType<PressVerdict.Said>(Use());
    }

    [Fact]
    public void A_forged_key_is_unknown()
    {
        Assert.Equal(new PressVerdict.Unknown(), Use("q7Zt0sK3xW9bVn2M"));
    }

    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, false)]   // from the very moment on
    [InlineData(1, false)]
    public void It_is_void_once_it_has_expired(int milliseconds, bool counts)
    {
        var verdict = Use(now: Morning.AddHours(1).AddMilliseconds(milliseconds));

        Assert.Equal(counts, verdict is PressVerdict.Said);
        Assert.Equal(!counts, verdict is PressVerdict.Expired);
    }

    [Fact]
    public void What_rolls_back_has_not_used_it_up()
    {
        Assert.Throws<FormatException>(() => studio.File.Write(session =>
        {
            session.Presses.Use(Key, Mira, Chat, Morning);
            Refuse();
        }));

        Assert.IsType<PressVerdict.Said>(Use());
    }

    [Fact]
    public void A_key_is_not_given_twice_nor_shorter_than_ninety_six_bits()
    {
        Assert.Throws<SqliteException>(() => Put(Key));
        Assert.Throws<SqliteException>(() => Put("short"));
    }

    [Fact]
    public void A_void_button_is_remembered_for_eight_days()
    {
        Assert.Equal(0, studio.File.Write(session => session.Presses.Prune(Morning.AddDays(8))));
        Assert.Equal(1, studio.File.Write(session => session.Presses.Prune(Morning.AddDays(9))));
        Assert.Equal(new PressVerdict.Unknown(), Use());
    }

    private PressVerdict Use(string key = Key, long user = Mira, long chat = Chat, DateTimeOffset? now = null) =>
        studio.File.Write(session => session.Presses.Use(key, user, chat, now ?? Morning));

    private void Put(string key) =>
        studio.File.Write(session => session.Presses.Put(new Press(key, Mira, Chat, "used 8 cups", Morning)));

    private static void Refuse() => throw new FormatException("a slip");
}
