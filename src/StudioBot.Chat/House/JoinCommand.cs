using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>join CODE</c>: comes in by an invitation, or takes a new studio by the code it shows where it
/// runs.</summary>
internal sealed class JoinCommand : Act
{
    private static readonly CodeSlot Code = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "join", Room.House, "Joins the studio.",
        [Code],
        ["join ABC123"])
    {
        More = "By an invitation.",
    };

    /// <inheritdoc/>
    internal override bool IsForStrangers => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        if (writing.Turn.Member is { } member)
        {
            return new Reply(new Block.Headline($"You belong to the studio already, {member.Name}."))
            {
                IsTrouble = true,
            };
        }

        var account = writing.Turn.UserId ?? throw new InvalidOperationException("Who joins has an account.");
        var (session, code) = (writing.Session, said.Of(Code));
        if (!session.Strangers.MayTry(account, writing.Now))
        {
            return NotIn;
        }

        if (session.Invitations.Use(code, writing.Now) is { } invited)
        {
            return invited.MemberId is not { } known ? Welcome(New(invited.Role, account, writing))
                : Back(known, account, writing) is { } back ? Welcome(back)
                : NotIn;
        }

        if (session.Claim.Try(code, writing.Now))
        {
            var welcome = Welcome(Claimed(account, writing));
            var first = Setup.Begin(writing);
            return new Reply([.. welcome.Blocks, .. Setup.Below(first)], first.Buttons);
        }

        session.Strangers.WasWrong(account, writing.Now);
        return NotIn;
    }

    // A wrong try counts, so what was written stands.
    private static Reply NotIn => Permissions.Stranger with { IsTrouble = false };

    // The steward who sat at the terminal comes with an account: it is the same person.
    private static Member Claimed(long account, Writing writing)
    {
        var members = writing.Session.Members;
        var steward = members.All().FirstOrDefault(member =>
            member.Role == Role.Steward && members.Accounts(member.Id).All(one => one == MemberRecords.Terminal));
        if (steward is null)
        {
            return New(Role.Steward, account, writing);
        }

        var named = steward with { Name = FreeName(writing) };
        members.Change(named, writing.Act);
        members.MoveAccount(named.Id, account, writing.Act);
        return named;
    }

    private static Member New(Role role, long account, Writing writing)
    {
        var members = writing.Session.Members;
        if (members.Former(account) is { } former)
        {
            var returned = former with { Role = role };
            members.Return(returned, writing.Act);
            return returned;
        }

        var member = members.Add(FreeName(writing), role, writing.Now, null, writing.Act);
        members.MoveAccount(member.Id, account, writing.Act);
        return member;
    }

    // None where they left meanwhile, or where the account was another's who left.
    private static Member? Back(long memberId, long account, Writing writing)
    {
        var members = writing.Session.Members;
        if (members.All().FirstOrDefault(member => member.Id == memberId) is not { } back
            || members.Former(account) is not null)
        {
            return null;
        }

        members.MoveAccount(memberId, account, writing.Act);
        return back;
    }

    // Two of one first name: the second is Pia 2.
    private static string FreeName(Writing writing)
    {
        const int longest = MemberNames.Longest;
        var typed = string.Join(' ', writing.Turn.Who.Name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var name = typed.Length == 0 ? "Member" : typed[..Characters.Before(typed, Math.Min(longest, typed.Length))];
        var free = name;
        var taken = writing.Session.Members.Names().Values.ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var count = 2; taken.Contains(free); count++)
        {
            free = $"{name} {count}";
        }

        return free;
    }

    private static Reply Welcome(Member member) => new(
        [
            new Block.Headline($"Welcome, {member.Name}."),
            new Block.Line(member.Role == Role.Steward
                ? "You keep house here: you can invite others, and set what the studio uses."
                : "You can ask and record from now on."),
        ],
        [new Button("What can I send?", "help")]);
}
