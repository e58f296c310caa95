using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary><c>members invite Jonas</c>: an invitation.</summary>
internal sealed class MembersInvite : Act
{
    // 24 letters to draw from: 128 bits.
    private const int CodeLength = 28;

    private const string Steward = "steward";

    private static readonly TimeSpan Lasts = TimeSpan.FromHours(24);

    private static readonly ChoiceSlot Invite = new("", "invite", ["invite"]) { IsRequired = true };
    private static readonly ChoiceSlot AsRole = new("role", "a role", ["member", Steward]);
    private static readonly PersonSlot Name = new("name") { MayBeNew = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "members", Room.House, "An invitation.",
        [Invite, AsRole, Name],
        ["members invite Jonas", "invite Jonas steward"])
    {
        More = "Good once, for a day.",
        AlsoSaying = ["invite"],
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        if (said.Has(Name) && writing.MemberNamed(said.Of(Name)) is { } here)
        {
            return new Reply(
                [
                    new Block.Headline($"{here.Name} belongs to the studio already. Nothing recorded."),
                    new Block.Line("Lost the account? A new one for the same member:"),
                    new Block.Sample($"members new account {here.Name}"),
                ],
                [new Button("New account", $"members new account {here.Name}")])
            {
                IsTrouble = true,
            };
        }

        var role = said.Or(AsRole, "member") == Steward ? Role.Steward : Role.Member;
        var whom = said.Has(Name) ? said.Of(Name) : "one person";
        return Of(
            $"An invitation for {whom}, as a {(role == Role.Steward ? "steward" : "member")}.",
            new Invited(role, null),
            writing);
    }

    /// <summary>A fresh code, shown this once.</summary>
    /// <param name="headline">What it is for.</param>
    /// <param name="what">What it is good for.</param>
    /// <param name="writing">The record it is made in.</param>
    internal static Reply Of(string headline, Invited what, Writing writing)
    {
        var code = writing.Turn.NewCode(CodeLength);
        var until = writing.Now + Lasts;
        writing.Session.Invitations.Put(code, what, until, writing.Act);
        var local = writing.Turn.Zone.LocalOf(until).ToString("ddd d MMM H:mm", CultureInfo.InvariantCulture);
        return new Reply(
            new Block.Headline(headline),
            new Block.Line("To be sent to me in private:"),
            new Block.Sample($"join {code}"),
            new Block.Line($"Good once, until {local}. Pass it on now: it is not shown again."));
    }
}
