using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using StudioBot.Chat;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Telegram;
using StudioBot.Host.Terminal;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Sample;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>Each hostile text in each field a member can set, in each place where it comes out again.</summary>
public sealed partial class HostileTextTests : IDisposable
{
    private const long Mira = 7;
    private const string Formula = "=+-@\t\r＝＋－＠﹦﹢﹣﹫−";

    private static readonly DateTimeOffset Now = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    // How each field is set; {} is the text.
    private static readonly string[] Fields =
    [
        "{}", "me name {}", "note 17 {}", "note 17: {}", "material new {} 500 ml 5.00", "material {} low 300 ml", "recipe {} 60 ml medium 20 ml white",
        "room {} 20C 58%", "shelf {} in cupboard", "shelf 17 {}", "technique {} film 1.4mm", "bought 1 L white 10.00 lot {}",
        "used 20 ml white {}", "used 20 ml {}", "bin 17 {}", "coat 17 failed {}", "stop lot {}", "reserve sat 10:00 8 people 2 tiles 10cm 5 colours {}",
        "remind me tomorrow {}", "studio name {}", "members invite {}", "members forget {}", "paid 5 to {}", "join {}", "pour 30cm panel bloom {}",
        "sold 17 85 {}", "help {}", "stock {}", "export {}", "undo {}",
    ];

    // What shows again what was set.
    private static readonly string[] Questions =
    [
        "members", "stock", "undo list", "piece 17", "recipe", "studio", "me", "shelf", "workshops", "members refused", "week", "export usage",
        "export stock", "export pieces", "export money",
    ];

    private readonly ITestOutputHelper output;
    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly Answering answering = Studios.Answering();
    private readonly List<string> wrong = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private int cells;

    public HostileTextTests(ITestOutputHelper output)
    {
        this.output = output;
        file.Write(session =>
        {
            SampleStudio.WriteInto(session);
            session.Members.AddAccount(Mira, session.Members.All().First(member => member.Name == "Mira").Id, Now);
            known.UnionWith(Names(session));
        });
    }

    public void Dispose() => file.Dispose();

    [Fact]
    public void Nothing_that_is_written_becomes_more_than_words()
    {
        Assert.True(HostileText.All.Count >= 200);
        var kept = 0;
        foreach (var text in HostileText.All)
        {
            kept += Everywhere(text);
        }

        output.WriteLine($"{HostileText.All.Count} texts, {Fields.Length} fields, {cells} cells, {kept} texts kept in fields");
        Assert.True(kept > HostileText.All.Count, "Hardly anything was recorded: the fields say nothing.");
        Assert.True(wrong.Count == 0, $"{wrong.Count} wrong:\n" + string.Join('\n', wrong.Take(60)));
    }

    // Says it in every field, then asks for all of it; then it is as if nothing was said.
    private int Everywhere(string text) => file.Write(session => session.Attempt(
        () =>
        {
            var kept = 0;
            foreach (var field in Fields)
            {
                kept += Guarded(text, field, () => Set(field.Replace("{}", text, StringComparison.Ordinal), session)) ? 1 : 0;
            }

            answering.Forget();
            foreach (var question in Questions)
            {
                Guarded(text, question, () => Ask(question, session));
            }

            Guarded(text, "pings", () => Ring(session));
            answering.Forget();
            return kept;
        },
        _ => false));

    private bool Guarded(string text, string where, Func<IEnumerable<string>> work)
    {
        try
        {
            var troubles = work().ToList();
            wrong.AddRange(troubles.Where(one => one.Length > 0).Select(one => $"{where} · {Shown(text)}: {one}"));
            return troubles.Contains("");
        }
        catch (Exception broken)
        {
            wrong.Add($"{where} · {Shown(text)}: {broken.GetType().Name} {broken.Message}");
            return false;
        }
    }

    // What is wrong with it; an empty trouble says that it was kept.
    private IEnumerable<string> Set(string words, StudioSession session)
    {
        var message = new ChatMessage(Mira, ChatKind.Private, 1, Mira, words, words, Now);
        var outcome = answering.To(message, session);
        if (outcome is { Recorded: false, Reply.Buttons: [{ Agrees: true } yes, ..] })
        {
            foreach (var trouble in Out(outcome.Reply))
            {
                yield return trouble;
            }

            (message, words) = (message with { Words = yes.Line, IsAgreed = true }, yes.Line);
            outcome = answering.To(message, session);
        }

        if (outcome is null)
        {
            yield return "met with silence";
            yield break;
        }

        foreach (var trouble in Out(outcome.Reply).Concat(outcome.Asides.SelectMany(aside => Out(aside.Reply))))
        {
            yield return trouble;
        }

        if (outcome is { Recorded: true })
        {
            answering.Forget();
            yield return IsKept(words, session) ? "" : "not kept as typed";
            var changed = Names(session).Where(name => !words.Contains(name, StringComparison.Ordinal) && known.Add(name)).ToList();
            if (changed.Count > 0)
            {
                yield return "changed on its way: " + Shown(changed[0]);
            }

            known.UnionWith(Names(session));
        }
        else if (outcome.Reply.IsTrouble && outcome.Reply.PlainText.Trim().Length < 10)
        {
            yield return "refused without a word";
        }
    }

    // Of two records in one message each keeps its own words; what takes back is no record of its own.
    private static bool IsKept(string words, StudioSession session) =>
        session.Acts.Recent(null, Now).Any(act => act.Words == words || words.Split('\n').Contains(act.Words))
        || words.StartsWith("members forget", StringComparison.Ordinal)
        || words.StartsWith("undo", StringComparison.Ordinal);

    private static IEnumerable<string> Names(StudioSession session) =>
        session.Members.Names().Values
            .Concat(session.Materials.All().Select(one => one.Name))
            .Concat(session.Rooms.All().Select(one => one.Name))
            .Concat(session.Recipes.All().Select(one => one.Name))
            .Append(session.Studio.Settings()!.Name);

    private IEnumerable<string> Ask(string question, StudioSession session)
    {
        var reply = answering.To(new ChatMessage(Mira, ChatKind.Private, 1, Mira, "Mira", question, Now), session)!.Reply;
        return Out(reply).Concat(reply.File is { IsPicture: false } table ? Table(table) : []);
    }

    private IEnumerable<string> Ring(StudioSession session) =>
        PingRound.Of(session, answering.Studio(session), Now.AddDays(2)).SelectMany(ping => Out(ping.Reply));

    // Each way out of the house.
    private IEnumerable<string> Out(Reply reply)
    {
        foreach (var (html, plain) in ReplyMarkup.Parts(reply))
        {
            cells += 3;
            var (read, trouble) = MarkupRules.Read(html);
            if (trouble is not null)
            {
                yield return trouble;
            }
            else if (read != plain)
            {
                yield return $"read as markup: {Shown(html)}";
            }

            var letter = LetterText.Read(LetterText.Of(new Letter(html, plain, [])));
            if (letter.Plain != plain || letter.Html != html)
            {
                yield return $"changed in the outbox: {Shown(plain)}";
            }

            if (plain.Any(letter => char.IsControl(letter) && letter is not ('\n' or '\t' or '\r')))
            {
                yield return $"a control character goes out: {Shown(plain)}";
            }
        }

        cells += 2;
        foreach (var colour in new[] { false, true })
        {
            var page = new StringWriter { NewLine = "\n" };
            new TerminalPage(page, colour).Write(reply);
            var left = colour ? Look().Replace(page.ToString(), "") : page.ToString();
            if (left.Any(letter => IsOrder(letter) && letter != '\n'))
            {
                yield return $"an order to the terminal: {Shown(left)}";
            }
        }

        cells++;
        var log = new StringWriter { NewLine = "\n" };
        using var words = new LineLog(log, new FakeTimeProvider(Now));
        words.CreateLogger("studio").LogError(new InvalidOperationException(reply.PlainText), "{Words}", reply.PlainText);
        using var json = new LineLog(log, new FakeTimeProvider(Now), isJson: true);
        json.CreateLogger("studio").LogError(new InvalidOperationException(reply.PlainText), "{Words}", reply.PlainText);
        if (log.ToString().Count(letter => letter == '\n') != 2 || log.ToString().Any(letter => IsOrder(letter) && letter != '\n'))
        {
            yield return $"a forged line: {Shown(log.ToString())}";
        }
    }

    // No cell of it begins a formula, nor does a line within one.
    private IEnumerable<string> Table(ReplyFile sent)
    {
        foreach (var cell in Cells(Encoding.UTF8.GetString(sent.Content).TrimStart('\ufeff')))
        {
            cells++;
            var begins = cell.Split('\n', '\r').Select(line => line.Trim().TrimStart('\u200b', '\ufeff', '\u200e', '\u200f'))
                .FirstOrDefault(line => line.Length > 0 && Formula.Contains(line[0], StringComparison.Ordinal)
                    && !Figure().IsMatch(line));
            if (begins is not null)
            {
                yield return $"a formula in {sent.Name}: {Shown(begins)}";
            }
        }
    }

    // RFC 4180, read by the letter.
    private static IEnumerable<string> Cells(string table)
    {
        var cell = new StringBuilder();
        var isQuoted = false;
        for (var at = 0; at < table.Length; at++)
        {
            var letter = table[at];
            if (letter == '"' && isQuoted && at + 1 < table.Length && table[at + 1] == '"')
            {
                cell.Append(table[++at]);
            }
            else if (letter == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (!isQuoted && letter is ',' or '\n')
            {
                yield return cell.ToString();
                cell.Clear();
            }
            else
            {
                cell.Append(letter);
            }
        }
    }

    // What a terminal or a viewer of logs does something at.
    private static bool IsOrder(char letter) => char.IsControl(letter) || letter is '\u2028' or '\u2029';

    private static string Shown(string text) => string.Concat((text.Length > 120 ? text[..120] + "…" : text)
        .Select(letter => letter is >= ' ' and < (char)127 ? letter.ToString() : $"\\u{(int)letter:x4}"));

    [GeneratedRegex(@"\A[-−]?[0-9.]+\z")]
    private static partial Regex Figure();

    [GeneratedRegex(@"\e\[(1|36|33|2|0)m")]
    private static partial Regex Look();
}
