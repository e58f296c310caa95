using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;

namespace StudioBot.Host.Tests.Support;

/// <summary>What members asked to be reminded of, as it stands in the records.</summary>
internal static class Requests
{
    /// <summary>As its pings are kept.</summary>
    public const string Kind = "AskedFor";

    /// <summary>Somebody asks to be reminded.</summary>
    /// <returns>The act, to be undone.</returns>
    public static Act Ask(
        StudioSession session, Member member, long number, string words, DateTimeOffset at, DateTimeOffset now)
    {
        var act = session.Acts.Begin(new NewAct("remind", member, $"remind me {words}", now));
        session.Studio.Set($"request {number}", words, act);
        Plan(session, member, number, at, act);
        return act;
    }

    /// <summary>Plans it; a second time changes nothing.</summary>
    public static bool Plan(StudioSession session, Member member, long number, DateTimeOffset at, Act? act = null) =>
        session.Reminders.Plan(
            new NewReminder(Kind, SubjectOf(number), at, $"{Kind}/{SubjectOf(number)}/1") { MemberId = member.Id }, act);

    /// <summary>As a request is kept.</summary>
    public static string SubjectOf(long number) => $"Request/{number}";
}
