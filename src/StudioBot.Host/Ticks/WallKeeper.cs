using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Practice;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Ticks;

/// <summary>Keeps the wall current: one message in the group, pinned once, changed in place and only when it says
/// something else.</summary>
/// <remarks>At most one change of it is on the way. A message that was deleted is sent anew by the one who carries the
/// post; a group that moved gets a new one.</remarks>
/// <param name="file">The studio.</param>
/// <param name="practice">What the trade assumes.</param>
/// <param name="isSample">Whether it is the invented studio.</param>
internal sealed class WallKeeper(StudioFile file, TradePractice practice, bool isSample = false)
{
    private const int PrintLetters = 16;
    private const long SecondsOfAnHour = 60 * 60;

    // What the wall was last reckoned from: nothing of it changes between two acts, but with the days and hours.
    private (long Act, long Hour) seen = (-1, -1);

    /// <summary>One look; never two at once.</summary>
    /// <returns>Whether something was put that is to be sent.</returns>
    public bool Look(DateTimeOffset now)
    {
        var (wall, standing, last) = file.Read(view => (Wall.Of(view), WallStanding.Of(view), view.Acts.LastId()));
        if (wall is null && standing is null)
        {
            return false;
        }

        var isNew = wall?.Chat != standing?.Chat || wall?.Hung != standing?.Hung;
        var reckoned = (last, now.ToUnixTimeSeconds() / SecondsOfAnHour);
        var isFree = standing?.OnTheWay is null;
        var page = wall is not null && (isNew || (isFree && reckoned != seen))
            ? file.Read(view => WallPage.Of(new Studio(view, practice, isSample), now))
            : null;
        if (!isNew && isFree && page is null)
        {
            return false;
        }

        var isPut = file.Write(session => Wall.Of(session) == wall && Keep(session, wall, page, now));

        // Only once it stands: what broke on the way is reckoned again.
        seen = page is not null && !isNew ? reckoned : seen;
        return isPut;
    }

    private bool Keep(StudioSession session, Wall? wall, Reply? page, DateTimeOffset now)
    {
        var before = Followed(session, WallStanding.Of(session), wall);
        var isPut = false;
        if (before is not null && (wall is null || wall.Hung != before.Hung || wall.Chat != before.Chat))
        {
            isPut = TakeDown(session, before, wall?.Chat, now);
            before = null;
        }

        var after = wall is null ? null : Arrived(session, before ?? new WallStanding(wall.Chat, wall.Hung));
        if (after is { Message: { } message } && after.Pinned != message)
        {
            Put(session, after.Chat, new Letter("", "", []) { Message = message, Pin = true }, now, null);
            (after, isPut) = (after with { Pinned = message }, true);
        }

        if (after is { OnTheWay: null } && page is not null && PrintOf(page) is var print && print != after.Print)
        {
            var key = string.Create(
                CultureInfo.InvariantCulture, $"wall {after.Chat} {now.ToUnixTimeMilliseconds()} {print}");
            var dated = WallPage.Dated(page, now, new Studio(session, practice, isSample));
            Put(session, after.Chat, Said(dated) with { Message = after.Message }, now, key);
            (after, isPut) = (after with { OnTheWay = key, Print = print }, true);
        }

        WallStanding.Keep(session, after);
        return isPut;
    }

    // The group moved, and a change was on the way: that arrives as the new message there. Where none was, the old
    // message means nothing there.
    private static WallStanding? Followed(StudioSession session, WallStanding? standing, Wall? wall) =>
        standing is not null && wall is not null && wall.Hung == standing.Hung && wall.Chat != standing.Chat
        && session.Moves.Now(standing.Chat) == wall.Chat
            ? new WallStanding(wall.Chat, wall.Hung)
            {
                OnTheWay = standing.OnTheWay,
                Print = standing.OnTheWay is null ? null : standing.Print,
            }
            : standing;

    // Looks where the last post of it is by now. One that will never arrive is put anew with the next change.
    private static WallStanding Arrived(StudioSession session, WallStanding standing) =>
        standing.OnTheWay is not { } key ? standing
        : session.Post.PutOnce(key) switch
        {
            { MessageId: { } message } => standing with { Message = message, OnTheWay = null },
            { IsSettled: false } => standing,
            _ => standing with { OnTheWay = null },
        };

    // What hung there says so; its pin goes where a new one comes into the same group.
    private static bool TakeDown(StudioSession session, WallStanding standing, long? next, DateTimeOffset now)
    {
        if (session.Moves.Now(standing.Chat) != standing.Chat)
        {
            return false;
        }

        var known = Arrived(session, standing);
        var gone = Said(WallPage.Gone);
        if (known.OnTheWay is { } key)
        {
            // It goes behind what it takes the place of.
            Put(session, known.Chat, gone with { InPlaceOf = key }, now, null);
            return true;
        }

        if (known.Message is not { } message)
        {
            return false;
        }

        if (next is null || next == known.Chat)
        {
            Put(session, known.Chat, new Letter("", "", []) { Message = message, Pin = false }, now, null);
        }

        Put(session, known.Chat, gone with { Message = message }, now, null);
        return true;
    }

    // A page of the wall is far shorter than what one message holds.
    private static Letter Said(Reply reply)
    {
        var (html, plain) = ReplyMarkup.Parts(reply)[0];
        return new Letter(html, plain, new Keyboard(reply.Buttons).Rows) { ByItself = true };
    }

    private static void Put(StudioSession session, long chat, Letter letter, DateTimeOffset now, string? key) =>
        session.Post.Put(chat, LetterText.Of(letter), Urgency.Digest, now, key);

    private static string PrintOf(Reply page) =>
        Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(page.PlainText)))[..PrintLetters];
}
