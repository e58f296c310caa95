namespace StudioBot.Chat.Reading;

/// <summary>Makes out whether a message is meant for the bot, which command it is, and reads it.</summary>
internal sealed class Listener(Catalogue catalogue)
{
    // What a phone can't hold is no message to the bot; it is answered without being read.
    private const int LongestRead = 2000;

    /// <summary>How the message is understood.</summary>
    public Heard Hear(Turn turn, Vocabulary vocabulary)
    {
        var addressed = Address.Of(turn, catalogue, vocabulary);
        if (addressed is null)
        {
            return new Heard.Silence();
        }

        if (addressed.Words.Length > LongestRead || string.IsNullOrWhiteSpace(addressed.Words))
        {
            return Unknown(addressed.Words);
        }

        if (Characters.HoldsUnkeepable(turn.Words))
        {
            return new Heard.Unread("", new Misread(
                "", "there is a sign in it that can't be kept: type it again by hand", "help"));
        }

        var context = new ReadingContext(vocabulary, turn.Who, turn.Local, catalogue.Words);
        var message = new Message(addressed.Words.Trim(), context, catalogue);
        return new Sentence(message, addressed.IsSlash).Hear() ?? Unknown(addressed.Words);
    }

    private Heard.Unread Unknown(string words)
    {
        var first = words.Trim().Split(' ', '\n')[0].TrimStart('/');
        var lower = first.ToLowerInvariant();
        var isGuess = lower.Length < 3 || Fillers.Holds(lower) || Fillers.OpensQuestion(lower);
        var nearest = isGuess ? [] : Nearest.All(lower, catalogue.Words, Nearest.Reach(lower));
        var example = nearest.Count > 0 ? catalogue.Of(nearest[0])[0].Sheet.Examples[0] : "help";
        return new Heard.Unread("", first.Length > 0
            ? new Misread(PhraseDraft.Short(first), "begins nothing that is known here", example)
            : new Misread("", "there are no words in it", example));
    }
}
