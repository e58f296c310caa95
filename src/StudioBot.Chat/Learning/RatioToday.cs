using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Practice;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Learning;

/// <summary>The ratio of base to thinner for today's warmth, in a line: by this studio's own readings of its medium,
/// else by common practice.</summary>
internal static class RatioToday
{
    /// <summary>Of a recipe that is one base and one thinner; none of any other.</summary>
    public static Block? Of(Recipe recipe, Turn turn, Studio studio) =>
        recipe.Parts.All(part => part.Amount is Amount.ByVolume)
        && Thinner([.. recipe.Parts.Select(part => part.Material)], studio) is { } thinner
            ? Said(recipe.Name, thinner, turn, studio)
            : null;

    /// <summary>Of a cup that holds one base and one thinner; none of any other.</summary>
    public static Block? Of(IReadOnlyList<string> parts, Turn turn, Studio studio) =>
        Thinner(parts, studio) is { } thinner ? Said(null, thinner, turn, studio) : null;

    private static Block.Line Said(string? mixture, string thinner, Turn turn, Studio studio)
    {
        var air = RoomNow.Of(studio.View.Rooms, turn.Now);
        var at = air ?? OwnFlow.Reference;
        var when = $"At {Show.Degrees(at)}{(air is null ? " (assumed)" : "")}";
        var own = mixture is null ? null : StudioFlow.Of(studio);
        return new Block.Line(own?.Learnt.ShareAt(mixture!, thinner, at) is { } share
            ? $"{when} about {Ratio(share.Middle)} flows as you like it "
                + $"({Ratio(share.High)} to {Ratio(share.Low)}), by {own.Grounds(turn)}."
            : $"{when} about {Ratio(MediumAdvice.UsualShare(at))}; common practice: 3:1 cold, 4:1 warm.");
    }

    private static string Ratio(double share) => $"{Show.Number(MediumAdvice.Parts(share))}:1";

    // The thinner of two parts of which the other is a medium's.
    private static string? Thinner(IReadOnlyList<string> parts, Studio studio)
    {
        List<MaterialKind?> kinds =
            [.. parts.Select(part => studio.Practice.Materials.FirstOrDefault(one => one.Name == part)?.Kind)];
        return kinds switch
        {
            [MaterialKind.Medium, MaterialKind.Thinner] => parts[1],
            [MaterialKind.Thinner, MaterialKind.Medium] => parts[0],
            _ => null,
        };
    }
}
