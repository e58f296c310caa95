using System.Globalization;

namespace StudioBot.Chat.Reading;

/// <summary>What of a message is meant for the bot.</summary>
/// <param name="Words">Without slash, mention and greeting.</param>
/// <param name="IsSlash">A slash stood before the first word, which then must be a command.</param>
internal sealed record Address(string Words, bool IsSlash)
{
    private const string Piece = "piece";
    private const string BeforeNumber = $"start {Piece}-";

    /// <summary>The words meant for the bot; none where it must keep silent.</summary>
    /// <remarks>
    /// In a group only a slash, a mention at the start or a reply to the bot is meant for it; another bot's name is
    /// silence, and so are an unknown slash word without our name and a reply that begins with no command or piece.
    /// </remarks>
    public static Address? Of(Turn turn, Catalogue catalogue, Vocabulary vocabulary)
    {
        var words = Trim(turn.Words);
        var isGroup = turn.Chat == ChatKind.Group;
        if (words.StartsWith('/'))
        {
            return Slash(Opened(words[1..]), turn.BotName, isGroup, catalogue);
        }

        var mention = "@" + turn.BotName;
        if (words.StartsWith(mention, StringComparison.OrdinalIgnoreCase) && !IsNameCharacter(words, mention.Length))
        {
            return new Address(words[mention.Length..].TrimStart(' ', ',', ':'), false);
        }

        if (!isGroup)
        {
            return new Address(words, false);
        }

        return turn.RepliesToBot && BeginsWithCommandOrPiece(words, catalogue, vocabulary)
            ? new Address(words, false)
            : null;
    }

    /// <summary>What a label's code says behind the chat service's own word for a first contact: it opens the piece,
    /// and nothing else that a code could say is taken from there.</summary>
    internal static string CodeOf(int piece) => string.Create(CultureInfo.InvariantCulture, $"{Piece}-{piece}");

    private static string Opened(string words) =>
        words.StartsWith(BeforeNumber, StringComparison.OrdinalIgnoreCase)
            && int.TryParse(
                words.AsSpan(BeforeNumber.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                ? string.Create(CultureInfo.InvariantCulture, $"{Piece} {number}")
                : words;

    private static Address? Slash(string words, string botName, bool isGroup, Catalogue catalogue)
    {
        var end = NameEnd(words, 0);
        var word = words[..end];
        if (end == words.Length || words[end] != '@')
        {
            var isUnknown = catalogue.Of(word.ToLowerInvariant()).Count == 0;
            return isGroup && isUnknown ? null : new Address(words, true);
        }

        var nameEnd = NameEnd(words, end + 1);
        var isOurs = words[(end + 1)..nameEnd].Equals(botName, StringComparison.OrdinalIgnoreCase);
        return isOurs ? new Address(word + words[nameEnd..], true) : null;
    }

    private static bool BeginsWithCommandOrPiece(string words, Catalogue catalogue, Vocabulary vocabulary)
    {
        var first = words.TrimStart('#').Split(' ', '\n', ',', ':')[0].ToLowerInvariant();
        var isNumber = int.TryParse(first, CultureInfo.InvariantCulture, out var number);
        return catalogue.Of(first).Count > 0 || (isNumber && vocabulary.Pieces.Contains(number));
    }

    private static bool IsNameCharacter(string words, int at) =>
        at < words.Length && (char.IsLetterOrDigit(words[at]) || words[at] == '_');

    private static int NameEnd(string words, int from)
    {
        var end = from;
        while (IsNameCharacter(words, end))
        {
            end++;
        }

        return end;
    }

    private static string Trim(string words)
    {
        var (start, end) = (0, words.Length);
        while (start < end && (char.IsWhiteSpace(words[start]) || Characters.IsInvisible(words[start])))
        {
            start++;
        }

        while (end > start && (char.IsWhiteSpace(words[end - 1]) || Characters.IsInvisible(words[end - 1])))
        {
            end--;
        }

        return words[start..end];
    }
}
