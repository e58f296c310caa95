using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Chat.Replies;
using StudioBot.Host.Turns;
using StudioBot.Host.Verbs;

namespace StudioBot.Host.Terminal;

/// <summary>The terminal as a chat: every line is a message of the invented studio's steward, in private.</summary>
internal sealed class TerminalChat(
    Conversation conversation, InventedStudio invented, Streams streams, TimeProvider time, ILogger log)
{
    private const string Prompt = "> ";
    private const char GoesOn = '\\';

    private readonly TerminalPage page = new(streams.Out, streams.HasColour);

    // Those under the last answer, in the order of their letters.
    private IReadOnlyList<Button> buttons = [];

    /// <summary>Until the input ends.</summary>
    public void Run()
    {
        if (streams.IsInteractive)
        {
            streams.Out.WriteLine("StudioBot, with an invented studio to try it on. Try  help , end with Ctrl+D.");
        }

        while (ReadMessage() is { } words)
        {
            if (!string.IsNullOrWhiteSpace(words))
            {
                Answer(Pressed(words) ?? words);
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
    private string? Pressed(string words)
    {
        var said = words.Trim();
        var place = said.Length == 1 ? char.ToLowerInvariant(said[0]) - 'a' : -1;
        if (place < 0 || place >= buttons.Count)
        {
            return null;
        }

        page.WritePressed(buttons[place].Line);
        return buttons[place].Line;
    }

    private void Answer(string words)
    {
        var reply = AnswerTo(words);
        buttons = reply?.Buttons ?? [];
        if (reply is not null)
        {
            page.Write(reply);
        }
    }

    private Reply? AnswerTo(string words)
    {
        var turn = new Turn(words, ChatKind.Private, invented.Steward, invented.Local(time.GetUtcNow()));
        try
        {
            return invented.Look(studio => conversation.Answer(turn, studio));
        }
        catch (Exception broken)
        {
            var mark = Apology.NewMark();
            log.LogError(broken, "Answering broke. Mark {Mark}.", mark);
            return Apology.With(mark);
        }
    }
}
