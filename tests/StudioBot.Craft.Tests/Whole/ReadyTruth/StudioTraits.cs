namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>What all pieces of a studio share and nobody there knows; constants of our making.</summary>
/// <param name="LogTransfer">How its still air differs in carrying vapour off, in logs.</param>
/// <param name="LogSkin">How its paints' skins differ in letting vapour through, in logs.</param>
/// <param name="SkinWithFilm">How much more open a thick film stays: a power of its thickness, 0 to 0.5.</param>
/// <param name="FilmOff">How far its films are off what the technique says, as a share.</param>
/// <param name="HandOff">How early (above 0) or late each of its makers calls a piece dry, in logs.</param>
internal sealed record StudioTraits(
    double LogTransfer, double LogSkin, double SkinWithFilm, double FilmOff, IReadOnlyList<double> HandOff)
{
    private const int Makers = 3;

    /// <summary>A studio as chance has it.</summary>
    public static StudioTraits Of(Dice dice) => new(
        dice.About(0.20),
        dice.About(0.28),
        dice.Between(0, 0.5),
        dice.About(0.08),
        [.. Enumerable.Range(0, Makers).Select(_ => dice.About(0.10))]);
}
