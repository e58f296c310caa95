using StudioBot.Chat.Reading;
using StudioBot.Craft.Practice;
using StudioBot.Records;

namespace StudioBot.Chat;

/// <summary>What an answer may look at: the records of one studio, and what the trade assumes.</summary>
public sealed class Studio
{
    private readonly Lazy<Vocabulary> _vocabulary;

    /// <summary>One studio, for as long as its view lasts.</summary>
    /// <param name="view">The records; read only.</param>
    /// <param name="practice">Films, densities, resin times, safety lines and causes, with their grounds.</param>
    /// <param name="isSample">Whether it is the invented studio, which answers that rest on records say.</param>
    public Studio(StudioView view, TradePractice practice, bool isSample)
    {
        (View, Practice, IsSample) = (view, practice, isSample);
        _vocabulary = new Lazy<Vocabulary>(() => StudioWords.Of(this));
    }

    /// <summary>The records; read only.</summary>
    public StudioView View { get; }

    /// <summary>What the trade assumes, with its grounds.</summary>
    public TradePractice Practice { get; }

    /// <summary>Whether it is the invented studio.</summary>
    public bool IsSample { get; }

    /// <summary>The words of this studio, gathered at the first message.</summary>
    internal Vocabulary Vocabulary => _vocabulary.Value;
}
