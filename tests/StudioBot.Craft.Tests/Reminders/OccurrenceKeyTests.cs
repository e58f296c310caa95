using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Reminders;

public sealed class OccurrenceKeyTests
{
    [Fact]
    public void A_key_is_kept_as_plain_words()
    {
        Assert.Equal("Ready/Piece/17/2", OccurrenceKey.Nth(PingKind.Ready, Plans.Piece, 2).ToString());
        Assert.Equal(
            "Week/Studio/1/2026-05-10",
            OccurrenceKey.On(PingKind.Week, Plans.Studio, new DateOnly(2026, 5, 10)).ToString());
    }

    [Fact]
    public void Kind_subject_and_occurrence_each_make_another_key()
    {
        OccurrenceKey[] keys =
        [
            .. from kind in Enum.GetValues<PingKind>()
               from subject in Enum.GetValues<PingSubjectKind>()
               from id in new long[] { 1, 11 }
               from count in new[] { 1, 11 }
               select OccurrenceKey.Nth(kind, new PingSubject(subject, id), count),
        ];

        Assert.Equal(keys.Length, keys.Select(key => key.ToString()).Distinct().Count());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Occurrences_are_counted_from_one(int count) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OccurrenceKey.Nth(PingKind.Ready, Plans.Piece, count));
}
