namespace StudioBot.Chat.Reading;

/// <summary>What was understood of a message: a form of a command with its slots filled.</summary>
public sealed class Phrase
{
    private readonly Dictionary<Slot, object> _values = [];

    internal Phrase(Command form, string typed, ReadingContext context) =>
        (Form, Typed, Context) = (form, typed, context);

    /// <summary>The form whose slots are filled.</summary>
    public Command Form { get; }

    /// <summary>The part of the message it was read from, as typed.</summary>
    public string Typed { get; }

    /// <summary>What was corrected, passed over or assumed, each in a few words that a reply can show.</summary>
    public IReadOnlyList<string> Notes => NoteList;

    /// <summary>Trailing words that go along as they are; empty where there are none.</summary>
    public string Remark { get; internal set; } = "";

    internal List<string> NoteList { get; } = [];

    internal ReadingContext Context { get; }

    /// <summary>Whether nothing was said for any slot.</summary>
    public bool IsEmpty => _values.Count == 0;

    /// <summary>Whether something was said for this slot.</summary>
    public bool Has(Slot slot) => _values.ContainsKey(slot);

    /// <summary>What was said for this slot.</summary>
    /// <exception cref="KeyNotFoundException">Nothing was: ask <see cref="Has"/> first, or take a default.</exception>
    public T Of<T>(Slot<T> slot)
        where T : notnull => (T)_values[slot];

    /// <summary>What was said for this slot, or a default that the reply shows.</summary>
    public T Or<T>(Slot<T> slot, T otherwise)
        where T : notnull => _values.TryGetValue(slot, out var value) ? (T)value : otherwise;

    /// <summary>Everything understood, by key, in the order of the slots.</summary>
    public IReadOnlyList<Meaning> Understood =>
        [.. Form.Sheet.Takes.SelectMany(slot => slot.Means(this)), .. Form.AlsoUnderstood(this)];

    /// <summary>The whole in words that would be read the same way.</summary>
    public string Line
    {
        get
        {
            List<string> parts = [Form.Sheet.Word];
            foreach (var slot in Form.Sheet.Takes)
            {
                if (slot.Say(this) is { Length: > 0 } words)
                {
                    parts.Add(words);
                }
            }

            if (Remark.Length > 0)
            {
                parts.Add(Remark);
            }

            return string.Join(' ', parts);
        }
    }

    internal void Put<T>(Slot<T> slot, T value)
        where T : notnull => _values[slot] = value;
}
