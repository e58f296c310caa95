using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>The stages as people type and read them.</summary>
internal static class StageWords
{
    /// <summary>The word of a stage, as <c>pieces</c> takes it.</summary>
    public static string Of(Stage stage) => stage switch
    {
        Stage.Drying => "drying",
        Stage.Ready => "ready",
        Stage.Coated => "coated",
        Stage.Cured => "cured",
        Stage.Kept => "kept",
        Stage.Sold => "sold",
        _ => "bin",
    };

    /// <summary>As a list counts them: 5 drying, 2 in the bin.</summary>
    public static string Counted(Stage stage) => stage == Stage.Bin ? "in the bin" : Of(stage);

    /// <summary>The word in which <c>pieces</c> is asked for a stage.</summary>
    public static string Asked(Stage stage) => stage == Stage.Bin ? "binned" : Of(stage);
}
