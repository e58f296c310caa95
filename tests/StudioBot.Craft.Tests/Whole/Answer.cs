using System.Globalization;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>What a check answers, in the words of the file.</summary>
internal static class Answer
{
    /// <summary>A number, with all its digits.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A <c>|</c> list of numbers.</summary>
    public static string List(IEnumerable<double> values) => string.Join('|', values.Select(Number));

    /// <summary>The number of a finding, with or without a caution, or the word of its verdict.</summary>
    public static string Of<T>(Finding<T> finding, Func<T, double> number) => finding switch
    {
        Finding<T>.Found found => Number(number(found.Value)),
        Finding<T>.Cautioned cautioned => Number(number(cautioned.Value)),
        Finding<T>.None { Kind: NoFigure.OutOfRange } => "out_of_range",
        Finding<T>.None { Kind: NoFigure.Undetermined } => "undetermined",
        Finding<T>.None { Kind: NoFigure.WrongDirection } => "wrong_direction",
        _ => throw new InvalidOperationException($"No word for {finding}."),
    };
}
