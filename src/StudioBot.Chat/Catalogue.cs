namespace StudioBot.Chat;

/// <summary>Every command there is, found once at start; help, menu, vocabulary and tests come from here.</summary>
public sealed class Catalogue
{
    private static readonly Lazy<Catalogue> All = new(() => new([.. typeof(Catalogue).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Command)) && !type.IsAbstract)
        .Select(type => (Command)Activator.CreateInstance(type, nonPublic: true)!)
        .OrderBy(form => form.Sheet.Room)
        .ThenBy(form => form.Sheet.Word, StringComparer.Ordinal)
        .ThenByDescending(form => form.Records)]));

    private readonly Dictionary<string, List<Command>> _byWord = [];

    private Catalogue(IReadOnlyList<Command> forms)
    {
        Forms = forms;
        foreach (var form in forms)
        {
            foreach (var word in form.Sheet.Also.Concat(form.Sheet.AlsoSaying).Prepend(form.Sheet.Word))
            {
                if (!_byWord.TryGetValue(word, out var forSame))
                {
                    _byWord[word] = forSame = [];
                }

                forSame.Add(form);
            }
        }

        Words = _byWord.Keys.Where(word => !word.Contains(' ', StringComparison.Ordinal)).ToHashSet();
    }

    /// <summary>All forms, by room and word; of one word, the one that records first.</summary>
    public IReadOnlyList<Command> Forms { get; }

    /// <summary>Every single word that begins a command.</summary>
    public IReadOnlySet<string> Words { get; }

    /// <summary>All commands of this assembly: the same catalogue for every studio.</summary>
    public static Catalogue Find() => All.Value;

    /// <summary>The forms of this word, or of another name of it; none where it is no command.</summary>
    public IReadOnlyList<Command> Of(string word) => _byWord.GetValueOrDefault(word, []);

    /// <summary>Whether this line may record: its word has a form that does, or is no command's and may be anything.
    /// </summary>
    public bool MayRecord(string line)
    {
        var end = line.AsSpan().IndexOfAny(' ', '\n');
        var forms = Of(end < 0 ? line : line[..end]);
        return forms.Count == 0 || forms.Any(form => form.Records);
    }

    /// <summary>The commands for a menu: each word once, with the help of its question, where it
    /// has one.</summary>
    /// <param name="chat">Where the menu opens.</param>
    /// <param name="isSteward">Whether for a steward.</param>
    public IReadOnlyList<(string Word, string Says)> Menu(ChatKind chat, bool isSteward) =>
        [.. Forms.Where(form => MayStand(form, chat, isSteward))
            .GroupBy(form => form.Sheet.Word)
            .Select(forms => Plain(forms) ?? forms.FirstOrDefault(form => form is Ask) ?? forms.First())
            .Select(form => (form.Sheet.Word, form.Sheet.Says))];

    /// <summary>Of one word's forms, the one that the word means where nothing stands behind it; none where something
    /// must.</summary>
    public static Command? Plain(IEnumerable<Command> forms) =>
        forms.FirstOrDefault(form => form.Sheet.Examples.Contains(form.Sheet.Word));

    private static bool MayStand(Command form, ChatKind chat, bool isSteward) =>
        (isSteward || !form.Sheet.StewardsOnly) && (chat == ChatKind.Private || !form.Sheet.PrivateOnly);
}
