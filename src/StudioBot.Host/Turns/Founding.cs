using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Members;

namespace StudioBot.Host.Turns;

/// <summary>How a studio in the data folder comes to be, and to its steward.</summary>
internal static class Founding
{
    private const int CodeLength = 11;   // 50 bits

    private static readonly TimeSpan CodeLasts = TimeSpan.FromMinutes(15);

    /// <summary>Makes the studio from the trade's values, where the file holds none yet.</summary>
    public static void Found(StudioFile file, TradePractice practice, DateTimeOffset now) => file.Write(session =>
    {
        if (session.Studio.Settings() is null)
        {
            NewStudio.WriteInto(session, practice, ZoneHere(), now);
        }
    });

    /// <summary>Who sits at the terminal speaks for the studio's first steward from now on.</summary>
    public static void SeatTerminal(StudioFile file, DateTimeOffset now) => file.Write(session =>
    {
        if (session.Members.ByAccount(MemberRecords.Terminal) is null)
        {
            var steward = session.Members.All().FirstOrDefault(member => member.Role == Role.Steward)
                ?? session.Members.Add("Steward", Role.Steward, now);
            session.Members.AddAccount(MemberRecords.Terminal, steward.Id, now);
        }
    });

    /// <summary>A fresh code by which the first steward takes the studio; none where a steward has an
    /// account.</summary>
    public static string? ClaimCode(StudioFile file, DateTimeOffset now) => file.Write(session =>
    {
        var members = session.Members;
        if (members.All().Any(member => member.Role == Role.Steward
            && members.Accounts(member.Id).Any(account => account != MemberRecords.Terminal)))
        {
            return null;
        }

        var code = Codes.New(CodeLength);
        session.Claim.Put(code, now + CodeLasts);
        return code;
    });

    private static string ZoneHere() => TimeZoneInfo.Local.HasIanaId ? TimeZoneInfo.Local.Id : "UTC";
}
