using StudioBot.Chat;
using StudioBot.Chat.Reading;
using StudioBot.Craft.Practice;
using StudioBot.Records;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;

namespace StudioBot.Host.Turns;

/// <summary>The invented studio: what questions are answered from. Nothing is recorded in it.</summary>
internal sealed class InventedStudio : IDisposable
{
    private readonly StudioFile? memory;
    private readonly string? path;
    private readonly TradePractice practice;
    private readonly TimeZoneInfo zone;

    // Nothing is recorded in it, so its words are gathered once.
    private Vocabulary? words;

    /// <summary>Writes it into memory, or looks at the one that was written into a file.</summary>
    /// <param name="practice">What the trade assumes.</param>
    /// <param name="path">A file that may hold it; none, or one without a studio: it is written into memory.</param>
    public InventedStudio(TradePractice practice, string? path = null)
    {
        this.practice = practice;
        if (path is not null
            && File.Exists(path)
            && StudioFile.Glance(path, view => view.Studio.Settings()) is not null)
        {
            this.path = path;
        }
        else
        {
            memory = StudioFile.OpenInMemory();
            memory.Write(SampleStudio.WriteInto);
        }

        var (named, steward) = Read(view => (
            view.Studio.Settings(),
            view.Members.All().First(member => member.Role == Role.Steward)));
        zone = TimeZoneInfo.FindSystemTimeZoneById(named!.Zone);
        Steward = new Speaker(steward.Name, IsSteward: true, steward.Units ?? named.Units);
    }

    /// <summary>Its steward, who speaks where the program itself is asked.</summary>
    public Speaker Steward { get; }

    /// <summary>A moment on its wall clock.</summary>
    public DateTime Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, zone).DateTime;

    /// <summary>Looks at it; what is returned must be whole.</summary>
    public T Look<T>(Func<Studio, T> look) => Read(view =>
    {
        var studio = new Studio(view, practice, isSample: true, words);
        words = studio.Words;
        return look(studio);
    });

    /// <summary>Forgets it.</summary>
    public void Dispose() => memory?.Dispose();

    private T Read<T>(Func<StudioView, T> read) => memory is null ? StudioFile.Glance(path!, read) : memory.Read(read);
}
