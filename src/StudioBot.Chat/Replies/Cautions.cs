using StudioBot.Craft.Practice;

namespace StudioBot.Chat.Replies;

/// <summary>
/// The cautions about what was asked: one in full, the others as a word; the product's sheet comes first.
/// </summary>
internal static class Cautions
{
    /// <summary>One block about these subjects, the first of them in full.</summary>
    public static Block.Caution About(Studio studio, params ReadOnlySpan<SafetySubject> subjects)
    {
        var safety = studio.Practice.Safety;
        var others = subjects.Length > 1 ? " Also: " + Words(safety, subjects[1..]) + "." : "";
        return new Block.Caution($"{safety.Of(subjects[0]).Line}{others} {safety.SheetFirst.Value}");
    }

    /// <summary>One line about this subject, for an answer that has room for no more.</summary>
    public static Block.Caution InAWord(Studio studio, SafetySubject subject) =>
        new($"{studio.Practice.Safety.Of(subject).Word.TrimEnd('.')}; the product's sheet first.");

    /// <summary>One block with a word for each of these subjects.</summary>
    public static Block.Caution InShort(Studio studio, params ReadOnlySpan<SafetySubject> subjects) =>
        new($"Mind: {Words(studio.Practice.Safety, subjects)}. {studio.Practice.Safety.SheetFirst.Value}");

    private static string Words(SafetyLines safety, ReadOnlySpan<SafetySubject> subjects)
    {
        List<string> words = [];
        foreach (var subject in subjects)
        {
            words.Add(safety.Of(subject).Word.TrimEnd('.'));
        }

        return string.Join(", ", words);
    }
}
