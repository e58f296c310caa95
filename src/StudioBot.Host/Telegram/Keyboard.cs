using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using StudioBot.Chat.Replies;
using StudioBot.Host.Sending;

namespace StudioBot.Host.Telegram;

/// <summary>The buttons under a message: at most three in a row, fewer where their words are long.</summary>
/// <remarks>A button whose line fits what the service carries, carries it; any other one carries a random key, and
/// its line
/// is kept here.</remarks>
internal sealed class Keyboard
{
    /// <summary>The most a button may carry, in bytes of UTF-8.</summary>
    public const int MostBytes = 64;

    private const char KeyMark = '~';
    private const char InPlaceMark = '=';
    private const int KeyBytes = 12; // 96 bits
    private const int MostInRow = 3;
    private const int MostLetters = 30;

    private readonly List<(string Key, Button Button)> kept = [];

    /// <summary>Lays the buttons out.</summary>
    public Keyboard(IEnumerable<Button> buttons) => Rows = InRows(buttons.Select(KeyOf));

    /// <summary>The rows, from top to bottom.</summary>
    public IReadOnlyList<IReadOnlyList<Key>> Rows { get; }

    /// <summary>Buttons whose line may record or was too long to be carried, each with the key that stands for
    /// it.</summary>
    public IReadOnlyList<(string Key, Button Button)> Kept => kept;

    /// <summary>The key that a button carried; none where it carried its line.</summary>
    public static string? KeyIn(string data) =>
        data.Length > 0 && data[0] is KeyMark or InPlaceMark ? data[1..] : null;

    /// <summary>Whether what comes of the press takes the place of the message.</summary>
    public static bool IsInPlace(string data) => data.Length > 0 && data[0] == InPlaceMark;

    private Key KeyOf(Button button)
    {
        var fits = !button.Records && Encoding.UTF8.GetByteCount(button.Line) <= MostBytes
            && button.Line[0] is not (KeyMark or InPlaceMark);
        if (fits)
        {
            return new Key(button.Label, button.Line);
        }

        var key = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes));
        kept.Add((key, button));
        return new Key(button.Label, (button.IsInPlace ? InPlaceMark : KeyMark) + key);
    }

    private static List<IReadOnlyList<Key>> InRows(IEnumerable<Key> keys)
    {
        var rows = new List<IReadOnlyList<Key>>();
        var row = new List<Key>();
        foreach (var key in keys)
        {
            var letters = row.Sum(other => other.Label.Length) + key.Label.Length;
            if (row.Count == MostInRow || (row.Count > 0 && letters > MostLetters))
            {
                rows.Add(row);
                row = [];
            }

            row.Add(key);
        }

        return row.Count > 0 ? [.. rows, row] : rows;
    }
}
