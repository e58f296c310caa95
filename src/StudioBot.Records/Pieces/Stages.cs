namespace StudioBot.Records.Pieces;

/// <summary>How stages are spelt in the file.</summary>
internal static class Stages
{
    public static readonly StoredWords<Stage> Words = new(
        (Stage.Drying, "drying"),
        (Stage.Ready, "ready"),
        (Stage.Coated, "coated"),
        (Stage.Cured, "cured"),
        (Stage.Kept, "kept"),
        (Stage.Sold, "sold"),
        (Stage.Bin, "bin"));
}
