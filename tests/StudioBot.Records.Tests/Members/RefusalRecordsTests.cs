using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Members;

public sealed class RefusalRecordsTests : IDisposable
{
    private const long Pia = 7001;

    private readonly TemporaryStudio studio = new();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_is_refused_is_read_back_the_newest_first()
    {
        var (first, second) = (Of("members", 0), Of("studio", 1) with { Standing = Standing.Stranger });
        Put(first);
        Put(second);

        Assert.Equal([second, first], Last());
    }

    [Fact]
    public void Long_words_are_cut_between_characters()
    {
        Put(Of(new string('x', 78) + "😀😀", 0) with { Name = new string('n', 200) });

        var kept = Assert.Single(Last());
        Assert.Equal(new string('x', 78) + "…", kept.Words);
        Assert.Equal(40, kept.Name.Length);
    }

    [Theory]
    [InlineData("update refusal set why = 'nothing'")]
    [InlineData("update refusal set words = 'other words'")]
    [InlineData("update refusal set refused_at = 0, user_id = 0, name = '', words = ''")]
    public void It_is_not_changed(string change)
    {
        Put(Of("members", 0));
        studio.File.Dispose();
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");

        var refused = Assert.Throws<SqliteException>(() => connection.Execute(change));
        Assert.Contains("only appended", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_kept_for_four_hundred_days()
    {
        Put(Of("members", 0));

        Assert.Equal(0, Prune(Morning.AddDays(400)));
        Assert.Single(Last());
        Assert.Equal(1, Prune(Morning.AddDays(400).AddMilliseconds(1)));
        Assert.Empty(Last());
    }

    [Fact]
    public void Of_one_account_a_hundred_are_written_in_a_day()
    {
        for (var tries = 0; tries < 150; tries++)
        {
            Put(Of("members", tries / 60.0));
        }

        Put(Of("members", 3) with { UserId = Pia + 1 });
        Assert.Equal(101, Last().Count);
        Put(Of("members", 24 * 60 + 3));
        Assert.Equal(102, Last().Count);
    }

    [Fact]
    public void Who_is_forgotten_is_taken_out_of_it_and_the_row_stays()
    {
        studio.File.Write(session =>
        {
            var pia = session.Members.Add("Pia", Role.Member, Morning);
            session.Members.AddAccount(Pia, pia.Id, Morning);
            session.Refusals.Put(Of("members", 0));
            session.Members.Forget(pia.Id, Morning);
        });

        Assert.Equal([new Refused(0, Standing.Member, "", "", "for stewards", Morning)], Last());
    }

    private static Refused Of(string words, double minute) =>
        new(Pia, Standing.Member, "Pia", words, "for stewards", Morning.AddMinutes(minute));

    private void Put(Refused refused) => studio.File.Write(session => session.Refusals.Put(refused));

    private int Prune(DateTimeOffset now) => studio.File.Write(session => session.Refusals.Prune(now));

    private IReadOnlyList<Refused> Last() => studio.File.Read(view => view.Refusals.Last(1000));
}
