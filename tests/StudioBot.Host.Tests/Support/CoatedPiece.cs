using System.Globalization;
using StudioBot.Chat;
using StudioBot.Host.Telegram;
using StudioBot.Host.Ticks;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.House;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Support;

/// <summary>A studio of one steward, at the terminal so far, with one piece under its first coat.</summary>
internal static class CoatedPiece
{
    private const long There = MemberRecords.Terminal;

    /// <summary>How long after its coat the window is said to be open, at this air.</summary>
    public static TimeSpan WindowOpensAfter()
    {
        var coated = new DateTimeOffset(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);
        using var file = StudioFile.OpenInMemory();
        WriteInto(file, coated);
        return OpensAt(file) - coated;
    }

    /// <summary>Writes it, with all said that falls due before the window opens.</summary>
    public static void WriteInto(StudioFile file, DateTimeOffset coated)
    {
        // Quiet hours far from the hours of the window, whenever the test runs.
        file.Write(session =>
        {
            NewStudio.WriteInto(session, Studios.Practice, "UTC", coated.AddDays(-40));
            var steward = session.Members.Add("Steward", Role.Steward, coated.AddDays(-40));
            session.Members.AddAccount(There, steward.Id, coated.AddDays(-40));
            session.Studio.Set("quiet", Quiet(coated), session.Acts.Begin(new NewAct("studio", steward, "quiet", coated)));
        });
        Say(file, "room 20C 50%", coated.AddDays(-30));
        Say(file, "pour 30cm panel bloom 6 colours", coated.AddDays(-30));
        Say(file, "room 20C 50%", coated.AddMinutes(-5));
        Say(file, "coat 1 180 ml 2:1", coated);
        new DueReminders(file, Studios.Practice).Say(OpensAt(file).AddMinutes(-1));
        while (file.Write(session => session.Post.ClaimFor(There)) is { } post)
        {
            file.Write(session => session.Post.Sent(post.Id, coated));
        }
    }

    private static DateTimeOffset OpensAt(StudioFile file) => file.Read(view =>
        view.Reminders.Due(DateTimeOffset.MaxValue.AddYears(-1000)).First(one => one.What.Kind == "WindowOpens").DueAt);

    private static string Quiet(DateTimeOffset coated)
    {
        var from = TimeOnly.FromDateTime(coated.UtcDateTime.AddHours(1));
        return string.Create(CultureInfo.InvariantCulture, $"{from:HH:mm}-{from.AddMinutes(10):HH:mm}");
    }

    private static void Say(StudioFile file, string words, DateTimeOffset at)
    {
        var message = new ChatMessage(There, ChatKind.Private, 1, There, "", words, at) { IsAgreed = true };
        var outcome = file.Write(session => Studios.Answering().To(message, session));
        Assert.True(outcome?.Recorded, $"{words}: {outcome?.Reply.PlainText}");
    }
}
