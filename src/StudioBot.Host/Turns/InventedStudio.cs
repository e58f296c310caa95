using StudioBot.Chat;
using StudioBot.Chat.Reading;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Sample;

namespace StudioBot.Host.Turns;

/// <summary>The invented studio, in memory: what questions are answered from, and nothing of it is kept.</summary>
internal sealed class InventedStudio : IDisposable
{
    /// <summary>Its steward, who speaks where the program itself is asked.</summary>
    public static readonly Speaker Steward = new("Mira", IsSteward: true);

    private readonly StudioFile file = StudioFile.OpenInMemory();
    private readonly TradePractice practice;
    private readonly TimeZoneInfo zone;

    /// <summary>Writes it.</summary>
    /// <param name="practice">What the trade assumes.</param>
    public InventedStudio(TradePractice practice)
    {
        this.practice = practice;
        file.Write(SampleStudio.WriteInto);
        var settings = file.Read(view => view.Studio.Settings())
            ?? throw new InvalidOperationException("The invented studio has no settings.");
        zone = TimeZoneInfo.FindSystemTimeZoneById(settings.Zone);
    }

    // Nothing is recorded in the invented studio, so its words are gathered once.
    private Vocabulary? words;

    /// <summary>A moment on its wall clock.</summary>
    public DateTime Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, zone).DateTime;

    /// <summary>Looks at it; what is returned must be whole.</summary>
    public T Look<T>(Func<Studio, T> look) => file.Read(view =>
    {
        var studio = new Studio(view, practice, isSample: true, words);
        words = studio.Words;
        return look(studio);
    });

    /// <summary>Forgets it.</summary>
    public void Dispose() => file.Dispose();
}
