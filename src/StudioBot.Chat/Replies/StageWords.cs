using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Replies;

/// <summary>How far a piece is, in a word or two.</summary>
internal static class StageWords
{
    /// <summary>drying, dry, curing.</summary>
    public static string Of(Stage stage) => stage switch
    {
        Stage.Drying => "drying",
        Stage.Ready => "dry",
        Stage.Coated => "curing",
        Stage.Cured => "cured",
        Stage.Kept => "kept",
        Stage.Sold => "sold",
        _ => "binned",
    };
}
