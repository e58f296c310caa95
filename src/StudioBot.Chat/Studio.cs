using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Surfaces;
using StudioBot.Records;

namespace StudioBot.Chat;

/// <summary>What an answer may look at: the records of one studio, and what the trade assumes.</summary>
public sealed class Studio
{
    private const string Unset = "UTC";

    // Not all that look at a studio read words.
    private readonly Lazy<Vocabulary> _words;

    private readonly Lazy<StudioZone> _zone;

    /// <summary>One studio, for as long as its view lasts.</summary>
    /// <param name="view">The records; read only.</param>
    /// <param name="practice">Films, densities, resin times, safety lines and causes, with their grounds.</param>
    /// <param name="isSample">Whether it is the invented studio, which answers that rest on records say.</param>
    /// <param name="words">Its words as gathered before; none: they are gathered now.</param>
    public Studio(StudioView view, TradePractice practice, bool isSample, Vocabulary? words = null)
    {
        (View, Practice, IsSample) = (view, practice, isSample);
        _zone = new(() => new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(view.Studio.Settings()?.Zone ?? Unset)));
        _words = new(() => words ?? StudioWords.Of(this));
    }

    /// <summary>The records; read only.</summary>
    public StudioView View { get; }

    /// <summary>What the trade assumes, with its grounds.</summary>
    public TradePractice Practice { get; }

    /// <summary>Its wall clock; that of UTC while it has not been founded.</summary>
    public StudioZone Zone => _zone.Value;

    /// <summary>Whether it is the invented studio.</summary>
    public bool IsSample { get; }

    /// <summary>The technique of this name, or the usual one, with this studio's own film where it found one.</summary>
    /// <param name="name">As the vocabulary calls it; none: the usual one.</param>
    internal Technique Technique(string? name)
    {
        var technique = name is null
            ? Practice.Pours.UsualTechnique.Value
            : Practice.Techniques.First(one => one.Name == name);
        var own = View.Studio.TechniqueOverrides().FirstOrDefault(one => one.Name == technique.Name);
        return own is null ? technique : technique with
        {
            Laid = own.Laid is { } laid ? new FilmRange(laid * 0.8, laid, laid * 1.25) : technique.Laid,
            RunOff = own.RunOff ?? technique.RunOff,
        };
    }

    /// <summary>What to mix for a pour: by this studio's own pours, where there are any, else by common practice.
    /// </summary>
    /// <param name="technique">How it is poured, of <see cref="Technique"/>.</param>
    /// <param name="surfaces">On what.</param>
    /// <param name="colours">1 or more.</param>
    /// <param name="learnt">What the own pours tell, of <see cref="StudioFilms"/>; none: common practice.</param>
    internal PourAmounts Amounts(Technique technique, SurfaceSet surfaces, int colours, LearntNeed? learnt) =>
        learnt is null
            ? PourAmounts.For(technique, surfaces, colours, Practice.Pours.SideFilm.Value)
            : PourAmounts.For(learnt.Technique, surfaces, colours, learnt.Estimate);

    /// <summary>The words of this studio: good for as long as its records name nothing new.</summary>
    public Vocabulary Words => _words.Value;
}
