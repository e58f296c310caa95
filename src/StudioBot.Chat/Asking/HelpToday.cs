using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Asking;

/// <summary>Five messages that this person, in this chat, can send today.</summary>
internal static class HelpToday
{
    private const int Shown = 5;

    // With two blanks and a slash it still stands on one line of a phone.
    private const int Longest = 37;

    // What is asked most, first.
    private static readonly (string Word, string Says)[] Usual =
    [
        ("amounts", "How much paint to mix:"),
        ("pour", "Poured something? It gets a number:"),
        ("resin", "How much resin to mix:"),
        ("used", "Took something from the shelf:"),
        ("air", "Is the air right for resin?"),
        ("flow", "Too thick, too thin, or a cup's seconds:"),
        ("why", "When something went wrong:"),
        ("ratio", "Parts of a mixture:"),
        ("scale", "A recipe in another size:"),
        ("quote", "What to ask for a piece:"),
        ("workshop", "Paint for a group:"),
        ("convert", "The same in another unit:"),
    ];

    /// <summary>Each message with what it is for; those that today's pieces call for come first.</summary>
    public static IReadOnlyList<(string Says, string Message)> Messages(
        IReadOnlyList<Command> answered,
        Turn turn,
        Studio studio) =>
    [
        .. Called(turn, studio)
            .Concat(Usual.Select(usual => (usual.Word, usual.Says, Message: "")))
            .Concat(answered
                .Where(form => form is not HelpCommand)
                .Select(form => (form.Sheet.Word, Says: "", Message: "")))
            .DistinctBy(call => call.Word)
            .Select(call => (
                Form: answered.FirstOrDefault(form => form.Sheet.Word == call.Word),
                call.Says,
                call.Message))
            .Where(call => call.Form is not null)
            .Select(call => (
                call.Says.Length > 0 ? call.Says : call.Form!.Sheet.Says,
                Message: call.Message.Length > 0 ? call.Message : Example(call.Form!)))
            .Where(call => call.Message.Length <= Longest)
            .Take(Shown),
    ];

    private static IEnumerable<(string Word, string Says, string Message)> Called(Turn turn, Studio studio)
    {
        var pieces = studio.View.Pieces.All();
        var ready = pieces.Where(piece => piece.Stage == Stage.Ready).Select(piece => piece.Number).Take(4).ToList();
        if (ready.Count > 0)
        {
            yield return (
                "resin",
                $"{(ready.Count == 1 ? "A piece is" : "Pieces are")} dry: how much resin?",
                $"resin {string.Join(' ', ready)}");
        }

        if (pieces.LastOrDefault(piece => piece.Maker == turn.Who.Name) is { } own)
        {
            yield return ("again", $"Your {own.Number} once more, in a new size:", $"again {own.Number} on 40cm round");
        }
    }

    private static string Example(Command form) =>
        form.Sheet.Examples.FirstOrDefault(example => example.Length <= Longest) ?? form.Sheet.Examples[0];
}
