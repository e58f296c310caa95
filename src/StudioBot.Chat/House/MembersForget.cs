using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.House;

/// <summary><c>members forget Pia</c>: takes a name and its accounts out for good; the sums stay.</summary>
/// <remarks>It begins no act: that would keep the name in its words, and nothing could take it back.</remarks>
internal sealed class MembersForget : Act
{
    private static readonly LedTextSlot Name = new("member", "forget", "a member's name", "Pia") { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "Takes a name out for good; the sums stay.",
        [Name],
        ["members forget Pia"])
    {
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var members = writing.Session.Members;
        var typed = said.Of(Name);
        var (id, name) = members.Names()
            .FirstOrDefault(one => one.Value.Equals(typed, StringComparison.OrdinalIgnoreCase));
        if (name is null)
        {
            return Trouble($"“{typed}” is no member here and never was. Nothing recorded.");
        }

        if (members.All().FirstOrDefault(member => member.Id == id) is { } here
            && Stewards.IsLast(here, writing.Session))
        {
            return Trouble($"{name} is the last steward: somebody else becomes one first. Nothing recorded.");
        }

        if (!writing.Turn.IsAgreed)
        {
            return new Reply(
                [
                    new Block.Headline($"Forget {name}? Nothing recorded yet."),
                    new Block.Line("Name and account go for good: no undo brings them back. What was booked stays."),
                    new Block.Line("What others typed about them stays as typed."),
                ],
                [new Button("Yes, for good", $"members forget {name}") { Agrees = true }])
            {
                IsTrouble = true,
            };
        }

        var called = members.Forget(id, writing.Now);
        return new Reply(
            new Block.Headline("Forgotten."),
            new Block.Line($"The books say “{called}” from now on; all sums are as they were."));
    }

    private static Reply Trouble(string why) => new(new Block.Headline(why)) { IsTrouble = true };
}
