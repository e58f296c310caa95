using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>What the sheets of the commands promise.</summary>
public sealed class SheetsTests
{
    private static readonly Catalogue Catalogue = Catalogue.Find();

    public static IEnumerable<object[]> Examples =>
        from form in Catalogue.Forms
        from example in form.Sheet.Examples
        select new object[] { form.GetType().Name, example };

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_is_read_as_its_own_form(string form, string example)
    {
        var heard = Sample.Listen(example);
        var said = heard switch
        {
            Heard.Asked asked => asked.Said,
            Heard.Told told => told.Said,
            _ => null,
        };
        Assert.True(said is not null, $"{example}: {Sample.Hear(example)}");
        Assert.Equal(form, said.Form.GetType().Name);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_comes_back_from_its_line_the_same(string form, string example) =>
        Assert.True(RoundTrip.Differs(example) is null, $"{form}: {RoundTrip.Differs(example)}");

    [Fact]
    public void A_word_begins_one_command_only()
    {
        var shared = Catalogue.Forms
            .SelectMany(form => form.Sheet.Also.Concat(form.Sheet.AlsoSaying).Prepend(form.Sheet.Word)
                .Select(word => (Word: word, Command: form.Sheet.Word)))
            .Distinct()
            .GroupBy(pair => pair.Word)
            .Where(group => group.Count() > 1)
            .Select(group => $"{group.Key}: {string.Join(", ", group.Select(pair => pair.Command))}");
        Assert.Empty(shared);
    }

    [Fact]
    public void Every_form_says_what_it_does_and_shows_how() =>
        Assert.All(Catalogue.Forms, form =>
        {
            Assert.EndsWith(".", form.Sheet.Says, StringComparison.Ordinal);
            Assert.NotEmpty(form.Sheet.Examples);
            Assert.All(form.Sheet.Takes, slot => Assert.NotEmpty(slot.What));
        });
}
