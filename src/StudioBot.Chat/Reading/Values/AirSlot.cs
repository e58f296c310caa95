using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>The air of a room: <c>21C 55%</c>, <c>70F 60 %</c>, <c>surface 15C</c>, <c>night 16C</c>.</summary>
internal sealed class AirSlot() : Slot<AirWords>("a temperature and a humidity", "21C 55%")
{
    // A studio outside these is a slip of the finger.
    private const double Coldest = -20;
    private const double Hottest = 50;

    /// <summary>Whether bare numbers are read, the first as degrees and the second as percent.</summary>
    public bool TakesBare { get; init; }

    /// <summary>Whether both are needed.</summary>
    public bool NeedsBoth { get; init; }

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Temperature, Measure.Percent];

    internal override IEnumerable<string> Lexicon => ["surface", "night", "degrees", "percent"];

    internal override int Take(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        var air = draft.Of<Draft>(this);
        if (atom.Kind == AtomKind.Quantity && atom.Unit!.Measure is Measure.Temperature or Measure.Degrees)
        {
            return TakeDegrees(draft, air, at, atom.Typed, atom.Unit.Name);
        }

        if (atom.Measures(Measure.Percent))
        {
            return TakeHumidity(draft, air, at);
        }

        if (atom.Lower is "surface" or "overnight" && atom.Kind == AtomKind.Word)
        {
            return 1;
        }

        return TakesBare && atom is { IsNumber: true, IsHashed: false } ? TakeFigure(draft, air, at) : 0;
    }

    internal override void Finish(PhraseDraft draft)
    {
        var air = draft.Of<Draft>(this);
        if (draft.Slips.Count > 0 || air.IsEmpty)
        {
            return;
        }

        if (NeedsBoth && (air.Air is null || air.Humidity is null))
        {
            draft.Missing(air.Air is null ? "the temperature is missing" : "the humidity is missing");
        }
        else
        {
            draft.Said.Put(this, new AirWords(air.Air, air.Humidity, air.Surface, air.Night));
        }
    }

    internal override IEnumerable<Meaning> Means(AirWords value)
    {
        if (value.Air is { } air)
        {
            yield return new("temperature_c", Figures.Of(air.Celsius));
        }

        if (value.Humidity is { } humidity)
        {
            yield return new("humidity_pct", Figures.Of(humidity.Percent));
        }

        if (value.Surface is { } surface)
        {
            yield return new("surface_c", Figures.Of(surface.Celsius));
        }

        if (value.Night is { } night)
        {
            yield return new("night_c", Figures.Of(night.Celsius));
        }
    }

    internal override string Say(AirWords value)
    {
        List<string> words = [];
        if (value.Air is { } air)
        {
            words.Add(Figures.Of(air.Celsius) + "C");
        }

        if (value.Humidity is { } humidity)
        {
            words.Add(Figures.Of(humidity.Percent) + "%");
        }

        if (value.Surface is { } surface)
        {
            words.Add($"surface {Figures.Of(surface.Celsius)}C");
        }

        if (value.Night is { } night)
        {
            words.Add($"night {Figures.Of(night.Celsius)}C");
        }

        return string.Join(' ', words);
    }

    // The first bare number is degrees, the second percent.
    private static int TakeFigure(PhraseDraft draft, Draft air, int at) => air switch
    {
        { Air: null } => TakeDegrees(draft, air, at, draft.Atoms[at].Value, "deg"),
        { Humidity: null } => TakeHumidity(draft, air, at),
        _ => 0,
    };

    private static int TakeDegrees(PhraseDraft draft, Draft air, int at, double degrees, string unit)
    {
        var isFahrenheit = unit == "f" || (unit == "deg" && draft.Context.Who.Units == UnitSystem.Us);
        var celsius = isFahrenheit ? (degrees - 32) / 1.8 : degrees;
        if (celsius < Temperature.AbsoluteZeroCelsius)
        {
            draft.Slip(at, 1, "is below absolute zero");
        }
        else if (celsius is < Coldest or > Hottest)
        {
            var isSwapped = draft.At(at + 1)?.Measures(Measure.Percent) == true;
            draft.Slip(at, 1, "is no temperature of a studio" + (isSwapped ? ": are the two swapped?" : ""));
        }
        else
        {
            Put(draft, air, at, Temperature.FromCelsius(celsius));
        }

        return 1;
    }

    private static void Put(PhraseDraft draft, Draft air, int at, Temperature temperature)
    {
        if (IsOf(draft, at, "surface", "panel", "tile", "piece", "board", "glass"))
        {
            air.Surface = temperature;
        }
        else if (IsOf(draft, at, "night", "overnight", "tonight"))
        {
            air.Night = temperature;
        }
        else if (air.Air is null)
        {
            air.Air = temperature;
        }
        else
        {
            draft.Slip(at, 1, "is a second temperature: write surface before it");
        }
    }

    // surface 15C, panel is 15 C: the word stands just before, or one filler away.
    private static bool IsOf(PhraseDraft draft, int at, params ReadOnlySpan<string> words)
    {
        for (var before = at - 1; before >= Math.Max(0, at - 3); before--)
        {
            if (draft.Atoms[before].Kind != AtomKind.Word)
            {
                return false;
            }

            if (draft.Atoms[before].IsWord(words))
            {
                draft.MarkTaken(before, 1);
                return true;
            }
        }

        return false;
    }

    private static int TakeHumidity(PhraseDraft draft, Draft air, int at)
    {
        var percent = draft.Atoms[at].Value;
        if (air.Humidity is not null)
        {
            draft.Slip(at, 1, "is a second humidity");
        }
        else if (percent is <= 0 or > 100)
        {
            draft.Slip(at, 1, "is no humidity of a room: above 0, up to 100 %");
        }
        else
        {
            air.Humidity = RelativeHumidity.FromPercent(percent);
        }

        return 1;
    }

    private sealed class Draft
    {
        public Temperature? Air { get; set; }

        public RelativeHumidity? Humidity { get; set; }

        public Temperature? Surface { get; set; }

        public Temperature? Night { get; set; }

        public bool IsEmpty => Air is null && Humidity is null && Surface is null && Night is null;
    }
}
