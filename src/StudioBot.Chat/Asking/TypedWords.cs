using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Records.Materials;
using Measure = StudioBot.Chat.Reading.Measure;

namespace StudioBot.Chat.Asking;

/// <summary>The words of a message as typed, where an error must point at one of them.</summary>
internal static partial class TypedWords
{
    private const double Near = 1e-6;

    /// <summary>Runs of letters, as typed.</summary>
    public static IReadOnlyList<string> Of(Phrase said) => new string(
        [.. said.Typed.Select(sign => char.IsLetter(sign) ? sign : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>This amount as it was typed: 4 oz; as one would type it where it was put together.</summary>
    public static string Amount(Phrase said, Amount amount) => Figured().Matches(said.Typed)
        .FirstOrDefault(match => Holds(match, amount))?.Value ?? AmountWords.Say(amount);

    private static bool Holds(Match match, Amount amount)
    {
        var size = amount switch
        {
            Amount.ByMass mass => mass.Mass.Grams,
            Amount.ByVolume volume => volume.Volume.Millilitres,
            _ => 0,
        };
        return UnitWords.Of(match.Groups[2].Value.ToLowerInvariant()) is { } unit
            && double.TryParse(match.Groups[1].Value.Replace(',', '.'), CultureInfo.InvariantCulture, out var typed)
            && Math.Abs(typed * unit.Factor / size - 1) < Near;
    }

    /// <summary>Whether a unit of this measure stands in it.</summary>
    public static bool HoldUnit(Phrase said, Measure measure) => Of(said).Any(word =>
        UnitWords.Of(word.ToLowerInvariant())?.Measure is { } found && (found == measure || found == Measure.Ounce));

    [GeneratedRegex(@"(\d+(?:[.,]\d+)?)\s*(\p{L}+)", RegexOptions.NonBacktracking)]
    private static partial Regex Figured();
}
