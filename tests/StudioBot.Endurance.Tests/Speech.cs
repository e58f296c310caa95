using StudioBot.Chat;
using StudioBot.Records.Members;

namespace StudioBot.Endurance.Tests;

/// <summary>What a member says in a private chat.</summary>
internal static class Speech
{
    /// <summary>These words, said now.</summary>
    public static Turn Of(Member who, string words, DateTimeOffset now, Studio studio, bool agrees = false) => new(
        words, ChatKind.Private, new Speaker(who.Name, who.Role == Role.Steward), studio.Zone.LocalOf(now))
    {
        Zone = studio.Zone, Now = now, Member = who, UserId = who.Id, ChatId = who.Id, IsAgreed = agrees,
    };
}
