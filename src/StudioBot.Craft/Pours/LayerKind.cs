namespace StudioBot.Craft.Pours;

/// <summary>What a layer of a pour is for.</summary>
public enum LayerKind
{
    /// <summary>The base coat, or pillow, that carries the rest.</summary>
    Base,

    /// <summary>All colours together.</summary>
    Colours,

    /// <summary>The cell activator, or the coat that is swiped.</summary>
    Activator,
}
