using System.Text;
using StudioBot.Chat.Tests.Whole;

namespace StudioBot.Endurance.Tests;

/// <summary>
/// Messages as no person would type them: real ones cut, joined, swapped and sprinkled, and pure noise.
/// </summary>
internal sealed class Scrambler(int seed)
{
    private static readonly string[] Pieces =
    [
        "30cm", "panel", "bloom", "6", "colours", "3:1", "250 ml", "-5", "1e9", "½", "1/2", "x", "×", "17", "#17",
        "white", "lamp black", "lot H-12", "\u200b", "\u202e", "٢٠", "😬", "👍🏽", "<b>", "&amp;", "'; drop table",
        "\n", "\t", "\"", "’", "°", "%", "€", "NaN", "∞", "1,200", "30..5",
        "9999999999999999999999", "/", "@studio_bot", "?", "why", "have", "want 2s", "ford4", "22 s", "21C", "55%", "tuesday", "28 Nov",
        "31 Feb", "11/12",
    ];

    private static readonly IReadOnlyList<string> Real = [.. MessageRow.All.Select(row => row.Text)];

    private readonly Random _random = new(seed);

    /// <summary>The next message.</summary>
    public string Next() => _random.Next(6) switch
    {
        0 => Noise(_random.Next(1, 120)),
        1 => string.Join(' ', Enumerable.Range(0, _random.Next(1, 14)).Select(_ => Piece())),
        2 => Pick() + (_random.Next(2) == 0 ? " " : "\n") + Pick(),
        _ => Mutated(Pick()),
    };

    private string Piece() => Pieces[_random.Next(Pieces.Length)];

    private string Pick() =>
        Real[_random.Next(Real.Count)] is { Length: <= 600 } text ? text : "amounts 30cm panel bloom";

    private string Mutated(string text)
    {
        var mutated = new StringBuilder(text);
        for (var times = _random.Next(1, 5); times > 0; times--)
        {
            var at = _random.Next(mutated.Length + 1);
            switch (_random.Next(5))
            {
                case 0 when at < mutated.Length:
                    mutated.Remove(at, 1);
                    break;
                case 1:
                    mutated.Insert(at, (char)_random.Next(32, 127));
                    break;
                case 2:
                    mutated.Insert(at, Piece());
                    break;
                case 3 when at + 1 < mutated.Length:
                    (mutated[at], mutated[at + 1]) = (mutated[at + 1], mutated[at]);
                    break;
                default:
                    mutated.Insert(at, (char)_random.Next(0x80, 0xffff));
                    break;
            }
        }

        return mutated.ToString();
    }

    private string Noise(int length)
    {
        var noise = new StringBuilder(length);
        for (var i = 0; i < length; i++)
        {
            noise.Append((char)_random.Next(1, _random.Next(2) == 0 ? 128 : 0xffff));
        }

        return noise.ToString();
    }
}
