namespace StudioBot.Craft.Pours;

/// <summary>One layer of a technique, with the film it leaves.</summary>
public sealed record Layer(LayerKind Kind, FilmRange Film);
