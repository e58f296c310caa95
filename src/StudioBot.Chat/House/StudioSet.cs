using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.House;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.House;

/// <summary><c>studio scoop 25 ml</c>: what the studio sets.</summary>
internal sealed class StudioSet : Act
{
    private const double LargestScoop = 1000;
    private const int LongestName = 80;

    private static readonly string[] Ways =
    [
        "studio scoop 25 ml", "studio currency EUR", "studio quiet 22-8", "studio zone Europe/Vienna",
        "studio week sunday 18:00", "studio units us", "studio sharing equal", "studio name The pour house",
    ];

    private static readonly AmountSlot Scoop = new("a scoop", "scoop 25 ml")
    {
        Lead = "scoop",
        Only = Measure.Volume,
        Key = "scoop",
    };
    private static readonly ChoiceSlot Currency = new("currency", "a currency", new Dictionary<string, string>
    {
        ["eur"] = "EUR",
        ["usd"] = "USD",
        ["gbp"] = "GBP",
        ["chf"] = "CHF",
    })
    {
        Leads = ["currency"],
    };
    private static readonly ChoiceSlot Units = new("units", "units", ["metric", "us", "imperial"])
    {
        Leads = ["units", "unit"],
    };
    private static readonly QuietSlot Quiet = new();
    private static readonly WeekDaySlot Week = new();
    private static readonly ZoneSlot Zone = new();
    private static readonly LedTextSlot Name = new("name", "name", "a name", "name The pour house")
    {
        Longest = LongestName,
    };
    private static readonly ChoiceSlot Sharing = new("sharing", "a sharing rule", new Dictionary<string, string>
    {
        ["use"] = SharingRule.ByUse,
        ["equal"] = SharingRule.Equal,
        ["equally"] = SharingRule.Equal,
        ["nobody"] = SharingRule.Nobody,
    })
    {
        Leads = ["sharing", "share"],
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "What the studio sets.",
        [Scoop, Currency, Units, Quiet, Week, Zone, Sharing, Name],
        Ways)
    {
        StewardsOnly = true,
    };

    /// <summary>A message that sets this.</summary>
    /// <param name="which">The word behind studio.</param>
    public static string WayTo(string which) =>
        Ways.First(way => way.StartsWith($"studio {which} ", StringComparison.Ordinal));

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        if (!Sheet.Takes.Any(said.Has))
        {
            return new Misread("", "what to set is missing", Sheet.Examples[0]);
        }

        return said.Has(Scoop) && said.Of(Scoop) is Amount.ByVolume { Volume.Millilitres: > LargestScoop }
            ? new Misread("scoop", "holds a litre at most", Sheet.Examples[0])
            : null;
    }

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        List<string> lines = [];
        var studio = writing.Session.Studio;
        var before = studio.Settings()!;
        var after = Changed(said, before, lines);
        if (after != before)
        {
            studio.Change(after, writing.Act);
        }

        if (said.Has(Quiet) && QuietSetting.Read(said.Of(Quiet)) is { } hours)
        {
            studio.Set(QuietSetting.Name, QuietSetting.Kept(hours.From, hours.Until), writing.Act);
            lines.Add($"Quiet hours: {QuietSetting.Said(hours)}, for all who set none of their own.");
        }

        if (said.Has(Week))
        {
            studio.Set(WeekSetting.Name, said.Of(Week), writing.Act);
            lines.Add($"The week comes {WeekSetting.Said(WeekSetting.Read(said.Of(Week)))}.");
        }

        if (said.Has(Sharing))
        {
            studio.Set(SharingRule.Name, said.Of(Sharing), writing.Act);
            lines.Add($"Differences of a count and what all use are borne {SharingRule.Said(said.Of(Sharing))}.");
        }

        // When a window or a weighing is spoken of depends on the night and the wall clock.
        if (said.Has(Quiet) || said.Has(Zone))
        {
            writing.Touch(writing.Session.Pieces.All().Select(piece => piece.Number));
        }

        var reply = new Reply([new Block.Headline(lines[0]), .. lines.Skip(1).Select(line => new Block.Line(line))]);
        return said.Has(Zone) ? Setup.After(Setup.Zone, reply, writing)
            : said.Has(Units) ? Setup.After(Setup.Units, reply, writing)
            : said.Has(Quiet) ? Setup.After(Setup.Quiet, reply, writing)
            : reply;
    }

    private static StudioSettings Changed(Phrase said, StudioSettings before, List<string> lines)
    {
        var after = before;
        if (said.Has(Scoop) && said.Of(Scoop) is Amount.ByVolume scoop)
        {
            after = after with { Scoop = scoop.Volume };
            lines.Add($"A scoop: {Show.Volume(scoop.Volume)}.");
        }

        if (said.Has(Currency))
        {
            after = after with { Currency = said.Of(Currency) };
            lines.Add($"Currency: {after.Currency}. Sums told before keep their figures.");
        }

        if (said.Has(Units))
        {
            after = after with { Units = UnitsWord.Read(said.Of(Units)) };
            lines.Add($"Units: {UnitsWord.Of(after.Units)}, for all who set none of their own.");
        }

        if (said.Has(Zone))
        {
            after = after with { Zone = said.Of(Zone) };
            lines.Add($"Zone: {after.Zone}. Reminders asked for before keep their moment.");
        }

        if (said.Has(Name))
        {
            after = after with { Name = said.Of(Name) };
            lines.Add($"Name: {after.Name}.");
        }

        return after;
    }
}
