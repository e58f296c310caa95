using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Chat.House;

/// <summary>Who keeps house: a studio is never without one.</summary>
internal static class Stewards
{
    /// <summary>Whether nobody would keep house without them.</summary>
    public static bool IsLast(Member member, StudioView view) =>
        member.Role == Role.Steward
        && view.Members.All().All(other => other.Id == member.Id || other.Role != Role.Steward);
}
