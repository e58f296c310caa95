using System.Text.RegularExpressions;
using StudioBot.Chat;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Turns;

/// <summary>What comes of a button that is pressed: what it says is asked, recorded or refused like any message of who
/// presses it.</summary>
/// <param name="answering">What comes of a message.</param>
internal sealed partial class Pressing(Answering answering)
{
    private const string TooOld = "This button is too old. Send the message again.";

    // The service shows so many characters of a notice.
    private const int LongestNotice = 200;

    /// <summary>Does what it says.</summary>
    /// <returns>Why not, in a few words that are shown for a moment; none where it is done.</returns>
    public string? Of(StudioSession session, ChatEvent.Pressed press, DateTimeOffset now)
    {
        var pressed = press.Message;
        if (session.Members.ByAccount(pressed.UserId) is null)
        {
            return Refused("This button is for members of the studio.", "not of the studio", session, pressed, now);
        }

        // A line on the button itself only asks; what a key stands for is known only here.
        return Keyboard.KeyIn(press.Data) is { } key
            ? Kept(key, Keyboard.IsInPlace(press.Data), session, pressed, now)
            : Carried(session, pressed with { Words = press.Data, IsCarried = true }, now);
    }

    private string? Carried(StudioSession session, ChatMessage pressed, DateTimeOffset now) =>
        answering.To(pressed, session) is { } outcome
            ? Said(outcome, OtherPage().IsMatch(pressed.Words), session, pressed, now)
            : null;

    private string? Kept(
        string key, bool isInPlace, StudioSession session, ChatMessage pressed, DateTimeOffset now)
    {
        // A press that came to nothing leaves the button to whom it is for.
        Outcome? outcome = null;
        var verdict = session.Attempt(
            () =>
            {
                var used = session.Presses.Use(key, pressed.UserId, pressed.Chat, now);
                outcome = used is PressVerdict.Said said
                    ? answering.To(pressed with { Words = said.Line, IsAgreed = said.Agrees }, session)
                    : null;
                return used;
            },
            _ => outcome is { Recorded: true });
        return verdict switch
        {
            PressVerdict.Said said => outcome is null ? null
                : Said(outcome, isInPlace, session, pressed with { Words = said.Line }, now),
            PressVerdict.SomebodyElses => Refused(
                "This button is somebody else's. Send the message yourself.", "somebody else's button",
                session, pressed, now),
            PressVerdict.UsedBefore => Refused(
                "This button was pressed before.", "pressed before", session, pressed, now),
            PressVerdict.Expired => Refused(TooOld, "too old a button", session, pressed, now),
            _ => Refused(TooOld, "no such button", session, pressed, now),
        };
    }

    // What is refused is told to who pressed, and to nobody else in the chat.
    private static string? Said(
        Outcome outcome, bool isInPlace, StudioSession session, ChatMessage pressed, DateTimeOffset now)
    {
        if (outcome.Barred is null)
        {
            if (isInPlace && !outcome.Reply.IsTrouble)
            {
                Posting.PutOn(session, pressed, outcome, now);
            }
            else
            {
                Posting.PutForPress(session, pressed, outcome, now);
            }

            return null;
        }

        Clerk.Note(session, pressed, outcome.Barred, now);
        var why = outcome.Reply.PlainText.ReplaceLineEndings(" ");
        return why.Length <= LongestNotice ? why : why[..(LongestNotice - 1)] + "…";
    }

    // Another page turns where the first one lies.
    [GeneratedRegex(@" page [0-9]+$", RegexOptions.NonBacktracking)]
    private static partial Regex OtherPage();

    private string Refused(
        string notice, string why, StudioSession session, ChatMessage pressed, DateTimeOffset now)
    {
        Clerk.Note(session, pressed, answering.Noted(why, pressed with { Words = "(a button)" }, session), now);
        return notice;
    }
}
