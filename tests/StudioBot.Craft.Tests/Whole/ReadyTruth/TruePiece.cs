using StudioBot.Craft.Air;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A 30 cm panel: when it was really ready, and what its studio could know of it on each day.</summary>
internal sealed class TruePiece
{
    /// <summary>No piece is followed longer, days.</summary>
    public const int Longest = 150;

    /// <summary>The last day it can be weighed on.</summary>
    public const int LastWeighed = 60;

    private const int HoursADay = 24;
    private const int ReadingsBefore = 30;          // how many days of readings the studio has had before a pour
    private const double Face = 0.09;               // m², 30 cm × 30 cm
    private const double Panel = 450;               // g
    private const double WoodBreathes = 0.15;       // g
    private const double Division = 0.1;            // g
    private const double LookOff = 0.12;            // one look's own doubt, in logs

    // Wet films of the techniques and of thin and thick work, mm (common practice).
    private static readonly double[] Films = [1.5, 2, 2.5, 2.5, 2.6, 2.8, 2.8, 3.5];

    private readonly List<double> _grams = [];
    private readonly double[] _looks;
    private readonly double _handOff;
    private readonly RoomTime?[] _elapsed = new RoomTime?[Longest + 1];
    private readonly RoomPace[] _pace = new RoomPace[Longest + 1];
    private readonly TrueRoom _room;

    /// <summary>Poured in this room on the evening of this day.</summary>
    public TruePiece(Dice dice, StudioTraits studio, TrueRoom room, int poured)
    {
        _room = room;
        Poured = poured;
        var film = dice.OneOf(Films);
        var onWood = dice.Happens(0.5);
        _handOff = dice.OneOf(studio.HandOff);
        _looks = [.. Enumerable.Range(0, Longest + 1).Select(_ => dice.About(LookOff))];
        Dry(dice, new TrueFilm(
            dice,
            studio,
            film * (1 + studio.FilmOff) * (1 + dice.About(0.10)),
            onWood,
            room.Humidity(poured * HoursADay)), onWood);
        Known = AsKnown(film, onWood);
    }

    /// <summary>The day of the studio's calendar it was poured on.</summary>
    public int Poured { get; }

    /// <summary>Days from the pour to the line, in truth.</summary>
    public double Ready { get; private set; } = Longest;

    /// <summary>What its makers know without a look or a weighing: technique, ground and scale.</summary>
    public DryingPiece Known { get; }

    /// <summary>Whether a hand calls it dry on this day.</summary>
    public bool Feels(int day) => Math.Log(day / Ready) + _handOff + _looks[day] >= 0;

    /// <summary>What the scale shows on this day.</summary>
    public Weighing Weighed(int day) => new(Elapsed(day), Mass.FromGrams(_grams[day]));

    /// <summary>Drying time by the studio's own clock, from what it had read by then.</summary>
    public TimeSpan Elapsed(int day)
    {
        if (_elapsed[day] is not { } known)
        {
            var clock = new RoomClock(_room.Readings(Poured - ReadingsBefore, Poured + day));
            _elapsed[day] = known = clock.Elapsed(At(0), At(day));
            _pace[day] = clock.PaceAt(At(day));
        }

        return known.Equivalent;
    }

    /// <summary>The pace the studio expects from then on.</summary>
    public RoomPace Pace(int day)
    {
        Elapsed(day);
        return _pace[day];
    }

    /// <summary>The air as last read by that day; null when nobody has.</summary>
    public RoomAir? Air(int day) => _room.Readings(Poured - ReadingsBefore, Poured + day).LastOrDefault()?.Air;

    /// <summary>Whether an interval of the drying time, as seen on this day, holds the truth.</summary>
    /// <remarks>Days gone by are known by the clock; days to come are those the outlook names.</remarks>
    public bool LiesWithin(ReadyPosterior belief, double low, double high, int day)
    {
        if (Ready > day)
        {
            var left = TimeSpan.FromDays(Ready - day);
            return belief.Left(low, Elapsed(day), Pace(day)) <= left
                && left <= belief.Left(high, Elapsed(day), Pace(day));
        }

        var before = (int)Ready;
        var at = Elapsed(before) + (Elapsed(before + 1) - Elapsed(before)) * (Ready - before);
        return belief.Quantile(low) <= at && at <= belief.Quantile(high);
    }

    private DateTimeOffset At(int day) => TrueRoom.Start.AddDays(Poured + day);

    private void Dry(Dice dice, TrueFilm film, bool onWood)
    {
        var ready = false;
        for (var hour = 0; hour < Longest * HoursADay; hour++)
        {
            if (hour % HoursADay == 0 && hour <= LastWeighed * HoursADay)
            {
                var shown = Panel + 1000 * Face * film.Above
                    + dice.About(Division) + (onWood ? dice.About(WoodBreathes) : 0);
                _grams.Add(Math.Round(shown / Division) * Division);
            }

            if (!ready && film.IsReady)
            {
                (ready, Ready) = (true, (double)hour / HoursADay);
            }

            if (ready && hour > LastWeighed * HoursADay)
            {
                return;
            }

            var now = Poured * HoursADay + hour;
            film.Dry(_room.Pull(now), _room.Humidity(now));
        }
    }

    private static DryingPiece AsKnown(double film, bool onWood)
    {
        var volume = Volume.FromMillilitres(Face * 1000 * film);
        return new DryingPiece(Length.FromMillimetres(film), WaterContent.OfFilm(volume))
        {
            Ground = onWood ? Ground.Thirsty : Ground.Sealed,
            Deviation = WeighingNoise.Of(
                Mass.FromGrams(Division),
                volume * Density.FromGramsPerMillilitre(0.45),
                onWood ? Mass.FromGrams(Panel) : default),
        };
    }
}
