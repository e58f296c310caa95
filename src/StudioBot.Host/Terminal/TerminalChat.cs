using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Telegram;
using StudioBot.Host.Turns;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.Members;

namespace StudioBot.Host.Terminal;

/// <summary>The terminal as a chat: every line is a message of the studio's steward, in private.</summary>
internal sealed class TerminalChat(
    StudioFile file, Answering answering, bool isSample, Streams streams, TimeProvider time, ILogger log)
{
    private const string Prompt = "> ";
    private const char GoesOn = '\\';

    private readonly TerminalPage page = new(streams.Out, streams.HasColour);

    // Those under the last answer, in the order of their letters.
    private IReadOnlyList<Button> buttons = [];

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

        while (ReadMessage() is { } words)
        {
            if (!string.IsNullOrWhiteSpace(words))
            {
                Answer(Pressed(words) ?? new Button("", words));
            }
        }

        if (streams.IsInteractive)
        {
            streams.Out.WriteLine();
        }
    }

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
            log.LogError(broken, "Answering broke. Mark {Mark}.", mark);
            return Apology.With(mark);
        }
    }
}
