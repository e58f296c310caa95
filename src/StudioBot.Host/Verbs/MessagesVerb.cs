using StudioBot.Chat;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot messages</c>: every message with what it does, as the part of the README between its two
/// marks.</summary>
internal sealed class MessagesVerb : Verb
{
    /// <summary>The line after which the README holds the page; an invisible remark there.</summary>
    public const string Begin = "<!-- studiobot messages: begin -->";

    /// <summary>The line before which the page ends there.</summary>
    public const string End = "<!-- studiobot messages: end -->";

    /// <inheritdoc/>
    public override string Word => "messages";

    /// <inheritdoc/>
    public override string Usage => "messages";

    /// <inheritdoc/>
    public override string Says => "Every message with what it does, as the README shows it.";

    /// <inheritdoc/>
    public override async Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        foreach (var line in Page(Catalogue.Find()))
        {
            await place.Streams.Out.WriteLineAsync(line);
        }

        return ExitCode.Done;
    }

    /// <summary>The page, line by line: what asks, what records, and the studio's housekeeping.</summary>
    /// <param name="catalogue">Every command there is; each of its forms is a row.</param>
    internal static IEnumerable<string> Page(Catalogue catalogue)
    {
        var forms = catalogue.Forms;
        return
        [
            .. Table(
                "## What to ask",
                "Order is free, filler words are passed over, British and American spelling, decimal comma and point, "
                    + "`½`, `12\"` and `×` all work.\n"
                    + "What a question leaves out has a default, and the answer shows the default it took.",
                "answers",
                forms.Where(form => form.Sheet.Room != Room.House && !form.Records)),
            "",
            .. Table(
                "## What to record",
                "Every record says what changed and the level after it, and carries an Undo.",
                "records",
                forms.Where(form => form.Sheet.Room != Room.House && form.Records)),
            "",
            .. Table(
                "## Keeping house",
                "Where nothing else is said, any member may.",
                "does",
                forms.Where(form => form.Sheet.Room == Room.House)),
        ];
    }

    private static IEnumerable<string> Table(string head, string words, string does, IEnumerable<Command> forms) =>
    [
        head,
        "",
        .. words.Split('\n'),
        "",
        $"| message | {does} |",
        "|---|---|",
        .. forms.Select(form => $"| {Examples(form.Sheet)} | {Cell(Told(form.Sheet))} |"),
    ];

    private static string Examples(CommandSheet sheet) =>
        string.Join(" · ", sheet.Examples.Select(example => $"`{Cell(example)}`"));

    private static string Told(CommandSheet sheet) =>
        string.Join(' ', new[] { sheet.Says, sheet.More, Whose(sheet) }.Where(words => words.Length > 0));

    private static string Whose(CommandSheet sheet) => (sheet.StewardsOnly, sheet.PrivateOnly) switch
    {
        (true, true) => "(Stewards, in private.)",
        (true, false) => "(Stewards.)",
        (false, true) => "(In private.)",
        _ => "",
    };

    private static string Cell(string words) => words.Replace("|", "\\|", StringComparison.Ordinal);
}
