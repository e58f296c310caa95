using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Ticks;
using StudioBot.Host.Turns;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Post;

namespace StudioBot.Host.Terminal;

/// <summary>The terminal as a chat: every line is a message of the studio's steward, in private.</summary>
/// <param name="file">The studio.</param>
/// <param name="answering">What comes of a message.</param>
/// <param name="reminders">What is said by itself.</param>
/// <param name="isSample">Whether it is the invented studio.</param>
/// <param name="exports">Where files go.</param>
/// <param name="backup">Makes a backup at this moment, and says what came of it.</param>
/// <param name="streams">Where words come in and go out.</param>
/// <param name="time">The clock.</param>
/// <param name="log">Where trouble is told.</param>
internal sealed class TerminalChat(
    StudioFile file,
    Answering answering,
    DueReminders reminders,
    bool isSample,
    Exports exports,
    Func<DateTimeOffset, string> backup,
    Streams streams,
    TimeProvider time,
    ILogger log)
{
    private const string Prompt = "> ";
    private const char GoesOn = '\\';

    private readonly TerminalPage page = new(streams.Out, streams.HasColour);

    // Those under the last answer, in the order of their letters.
    private IReadOnlyList<Button> buttons = [];

    // The screen is one: an answer and what the bot says by itself never mix.
    private readonly Lock screen = new();

    private long messages;

    /// <summary>Answers until the input ends.</summary>
    public void Run()
    {
        if (streams.IsInteractive)
        {
            streams.Out.WriteLine(isSample
                ? "StudioBot, with an invented studio to try it on; nothing is kept. Try  help , end with Ctrl+D."
                : "StudioBot. What you record is kept. Try  help , end with Ctrl+D.");
        }

        using var often = time.CreateTimer(_ => SayWhatIsDue(), null, TimeSpan.Zero, Schedule.Often);
        while (ReadMessage() is { } words)
        {
            lock (screen)
            {
                if (!string.IsNullOrWhiteSpace(words))
                {
                    Answer(Pressed(words) ?? new Button("", words));
                }
            }

            SayWhatIsDue();
        }

        if (streams.IsInteractive)
        {
            streams.Out.WriteLine();
        }
    }

    private void SayWhatIsDue()
    {
        lock (screen)
        {
            try
            {
                reminders.Say(time.GetUtcNow());
                while (file.Write(session => session.Post.ClaimFor(MemberRecords.Terminal)) is { } post)
                {
                    Show(file.Write(session => Letter.Of(post, session.Post)));
                    file.Write(session => session.Post.Sent(post.Id, time.GetUtcNow()));
                }
            }
            catch (Exception broken)
            {
                log.LogError(Events.TerminalDueBroke, broken, "Looking for what is due broke.");
            }
        }
    }

    private void Show(Letter letter)
    {
        buttons = [.. letter.Keys.SelectMany(row => row).Select(Kept).OfType<Button>()];
        page.Write(new Reply(
            [.. letter.Plain.ReplaceLineEndings("\n").Split('\n').Select(line => new Block.Line(line))], buttons));
        Keep(letter.File is { } sent ? new ReplyFile(sent.Name, sent.MediaType, sent.Content) : null);
    }

    // What stands behind a key is said once it is pressed.
    private Button? Kept(Key key) => Keyboard.KeyIn(key.Data) is not { } kept
        ? new Button(key.Label, key.Data)
        : file.Write(session => session.Presses.Use(
                kept, MemberRecords.Terminal, MemberRecords.Terminal, time.GetUtcNow())) is PressVerdict.Said said
            ? new Button(key.Label, said.Line) { Agrees = said.Agrees }
            : null;

    private string? ReadMessage()
    {
        if (ReadLine() is not { } line)
        {
            return null;
        }

        var lines = new List<string>();
        while (line.EndsWith(GoesOn))
        {
            lines.Add(line[..^1]);
            line = ReadLine() ?? "";
        }

        return string.Join('\n', lines.Append(line));
    }

    private string? ReadLine()
    {
        if (streams.IsInteractive)
        {
            streams.Out.Write(Prompt);
            streams.Out.Flush();
        }

        return streams.In.ReadLine();
    }

    // A letter alone presses; a number alone is a piece.
    private Button? Pressed(string words)
    {
        var said = words.Trim();
        var place = said.Length == 1 ? char.ToLowerInvariant(said[0]) - 'a' : -1;
        if (place < 0 || place >= buttons.Count)
        {
            return null;
        }

        page.WritePressed(buttons[place].Line);
        return buttons[place];
    }

    private void Answer(Button said)
    {
        var reply = AnswerTo(said);
        buttons = reply?.Buttons ?? [];
        if (reply is not null)
        {
            page.Write(reply);
            Keep(reply.File);
            if (reply.BringsBackup)
            {
                page.WriteNote(backup(time.GetUtcNow()));
            }
        }
    }

    private void Keep(ReplyFile? enclosed)
    {
        if (enclosed is not null)
        {
            page.WriteNote(exports.Write(enclosed));
        }
    }

    private Reply? AnswerTo(Button said)
    {
        var now = time.GetUtcNow();
        var message = new ChatMessage(
            MemberRecords.Terminal, ChatKind.Private, ++messages, MemberRecords.Terminal, "", said.Line, now)
        {
            IsAgreed = said.Agrees,
        };
        try
        {
            return file.Write(session =>
            {
                var outcome = answering.To(message, session);
                if (outcome is not null)
                {
                    Posting.PutBeside(session, outcome, now);
                }

                return outcome?.Reply;
            });
        }
        catch (Exception broken)
        {
            answering.Forget();
            var mark = Apology.NewMark();
            log.LogError(Events.TerminalAnswerBroke, broken, "Answering broke. Mark {Mark}.", mark);
            return Apology.With(mark);
        }
    }
}
