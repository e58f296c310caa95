using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Pings;

/// <summary>Who hears of the studio's week.</summary>
/// <param name="Group">Its group; none while none is known.</param>
/// <param name="Stewards">Where there is no group: the stewards who did not switch it off.</param>
internal sealed record WeekHearers(long? Group, IReadOnlyList<Member> Stewards)
{
    /// <summary>Whether nobody wants to hear it.</summary>
    public bool Nobody => Group is null && Stewards.Count == 0;

    /// <summary>As it stands now.</summary>
    public static WeekHearers Of(StudioSession session, PingTurn turn) => new(
        StudioGroup.Of(session),
        [
            .. session.Members.All().Where(member => member.Role == Role.Steward
                && !turn.Studio.View.Wishes.Of(member.Id).Unwanted.Contains(nameof(PingKind.Week))),
        ]);
}
