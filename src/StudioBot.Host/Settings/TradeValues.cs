using System.Globalization;
using System.Text.Json;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Practice;

namespace StudioBot.Host.Settings;

/// <summary>The kinds of value that stand in the trade's files. Each notes what can't stand and goes on.</summary>
internal static class TradeValues
{
    private const int LongestText = 200;

    /// <summary>A number inside these bounds.</summary>
    public static double Number(this TradeNode node, string key, TradeBounds bounds)
    {
        var written = node.Needed(key, bounds.Shown);
        if (written.ValueKind == JsonValueKind.Number && written.TryGetDouble(out var number) && bounds.Hold(number))
        {
            return number;
        }

        if (written.ValueKind != JsonValueKind.Undefined)
        {
            var isNumber = written.ValueKind == JsonValueKind.Number;
            node.Wrong(key, isNumber ? $"it must be {bounds}" : "a plain number belongs here", bounds.Shown);
        }

        return bounds.Example;
    }

    /// <summary>A whole number inside these bounds.</summary>
    public static int Whole(this TradeNode node, string key, TradeBounds bounds)
    {
        var number = node.Number(key, bounds);
        if (number != Math.Floor(number))
        {
            node.Wrong(key, "a whole number belongs here", bounds.Shown);
        }

        return (int)number;
    }

    /// <summary>Some words, not empty, on one line.</summary>
    public static string Text(this TradeNode node, string key, string example)
    {
        var written = node.Needed(key, $"\"{example}\"");
        if (written.ValueKind == JsonValueKind.String && IsText(written))
        {
            return written.GetString()!;
        }

        if (written.ValueKind != JsonValueKind.Undefined)
        {
            node.Wrong(key, $"words belong here, {LongestText} letters at most", $"\"{example}\"");
        }

        return example;
    }

    /// <summary>A list of words, which may be empty.</summary>
    public static IReadOnlyList<string> Words(this TradeNode node, string key)
    {
        var written = node.Needed(key, "[]");
        if (written.ValueKind == JsonValueKind.Array && written.EnumerateArray().All(IsText))
        {
            return [.. written.EnumerateArray().Select(word => word.GetString()!)];
        }

        if (written.ValueKind != JsonValueKind.Undefined)
        {
            node.Wrong(key, "a list of words belongs here", "[\"first\", \"second\"]");
        }

        return [];
    }

    /// <summary>One of the names of <typeparamref name="T"/>, written with a small first letter.</summary>
    public static T Choice<T>(this TradeNode node, string key)
        where T : struct, Enum
    {
        var choices = Enum.GetValues<T>().ToDictionary(Name);
        var example = choices.First();
        var typed = node.Text(key, example.Key);
        if (choices.TryGetValue(typed, out var chosen))
        {
            return chosen;
        }

        node.Wrong(key, "there is no such choice", $"\"{TradeNearest.To(typed, choices.Keys)}\"");
        return example.Value;
    }

    /// <summary>The entry that the value names; none, and noted, where no entry has this name.</summary>
    public static T? Named<T>(this TradeNode node, IReadOnlyList<T> entries, Func<T, string> name)
        where T : class
    {
        var typed = node.Text("value", entries.Count > 0 ? name(entries[0]) : "a name");
        var named = entries.FirstOrDefault(entry => name(entry) == typed);
        if (named is null && entries.Count > 0)
        {
            var nearest = TradeNearest.To(typed, entries.Select(name));
            node.Wrong("value", "no entry of this file has this name", $"\"{nearest}\"");
        }

        return named;
    }

    /// <summary>Low, usual and high, in this order.</summary>
    public static (double Low, double Usual, double High) Scatter(this TradeNode node, TradeBounds bounds)
    {
        var low = node.Number("low", bounds);
        var usual = node.Number("usual", bounds);
        var high = node.Number("high", bounds);
        if (node.IsSound && (low > usual || usual > high))
        {
            node.Wrong("usual", "it must lie between low and high", TradeBounds.Text((low + high) / 2));
        }

        return (low, usual, high);
    }

    /// <summary>A ratio with its basis: 3:1 by volume, 100:45 by weight.</summary>
    public static MixRatio Ratio(this TradeNode node, string key)
    {
        const string example = "3:1 by volume";
        var words = node.Text(key, example).Split(' ', 2);
        var parts = words[0].Split(':').Select(Part).ToList();
        RatioBy? by = words.ElementAtOrDefault(1) switch
        {
            "by volume" => RatioBy.Volume,
            "by weight" => RatioBy.Mass,
            _ => null,
        };
        if (by is { } basis && parts.Count == 2 && parts.All(part => part is > 0 and <= 1000))
        {
            return new(parts, basis);
        }

        node.Wrong(key, "two parts split by a colon, and by what they are counted, belong here", $"\"{example}\"");
        return new([1, 1]);
    }

    /// <summary>Where the values of this object come from.</summary>
    public static Provenance Provenance(this TradeNode node)
    {
        const string key = "provenance";
        var words = node.Text(key, "common practice").Split(':', 2, StringSplitOptions.TrimEntries);
        var source = words.ElementAtOrDefault(1);
        ProvenanceKind? kind = words[0] switch
        {
            "verified" => ProvenanceKind.Verified,
            "common practice" => ProvenanceKind.CommonPractice,
            "memory" => ProvenanceKind.Memory,
            _ => null,
        };
        if (kind is null)
        {
            node.Wrong(key, "it is verified, common practice or memory", "\"common practice\"");
        }
        else if (source is "" || (kind == ProvenanceKind.Verified && source is null))
        {
            node.Wrong(key, "the source is missing", "\"verified: the standard or text it was read in\"");
        }

        return new(kind ?? ProvenanceKind.CommonPractice, source);
    }

    /// <summary>An object of one value and its provenance.</summary>
    public static Sourced<T> Sourced<T>(this TradeNode node, string key, Func<TradeNode, T> read) =>
        node.Object(key, inner => new Sourced<T>(read(inner), inner.Provenance()));

    /// <summary>An object with a number as its value, and its provenance.</summary>
    public static Sourced<T> Sourced<T>(this TradeNode node, string key, TradeBounds bounds, Func<double, T> of) =>
        node.Sourced(key, inner => of(inner.Number("value", bounds)));

    /// <summary>A choice as a settings file writes it.</summary>
    public static string Name<T>(T choice)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(choice.ToString());

    // A part that is no number is no part: zero, which no ratio takes.
    private static double Part(string part) =>
        double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : 0;

    private static bool IsText(JsonElement written) =>
        written.ValueKind == JsonValueKind.String
        && written.GetString() is { Length: > 0 and <= LongestText } text
        && !string.IsNullOrWhiteSpace(text)
        && !text.Any(char.IsControl);
}
