using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.House;

/// <summary>What a member may be called.</summary>
internal static class MemberNames
{
    /// <summary>The longest that a figure behind it still fits.</summary>
    public const int Longest = 36;

    /// <summary>Why nobody here can be called so; none where one can.</summary>
    public static Reply? Against(string name, Writing writing)
    {
        const string sample = "me name Pia Holm";
        var taken = writing.Session.Members.Names();
        return name.Length > Longest
            ? OwnMeasure.Trouble(
                $"“{Labels.Cut(name, 13)}” is too long: a name has {Longest} letters at most", "Try", sample, writing)
            : taken.Any(one => one.Key != writing.Author.Id
                && one.Value.Equals(name, StringComparison.OrdinalIgnoreCase))
                ? OwnMeasure.Trouble(
                    $"“{name}” is somebody's name here already", "Two names tell you apart:", sample, writing)
                : null;
    }
}
