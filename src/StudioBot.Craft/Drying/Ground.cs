namespace StudioBot.Craft.Drying;

/// <summary>What a piece was poured on.</summary>
public enum Ground
{
    /// <summary>Tile, glass, primed or sealed board: takes up no water.</summary>
    Sealed,

    /// <summary>Raw wood or canvas: soaks up water and gives it back late.</summary>
    Thirsty,
}
