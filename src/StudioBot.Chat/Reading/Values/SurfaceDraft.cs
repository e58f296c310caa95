namespace StudioBot.Chat.Reading.Values;

/// <summary>A surface while its words are being gathered: they may stand apart.</summary>
internal sealed class SurfaceDraft
{
    public List<Group> Groups { get; } = [];

    public Group Now { get; private set; } = new();

    /// <summary>In cm, and where it stands; none without one.</summary>
    public (double Depth, int At)? Depth { get; set; }

    public void Next()
    {
        Groups.Add(Now);
        Now = new Group();
    }

    /// <summary>One kind of surface.</summary>
    internal sealed class Group
    {
        public int? Count { get; set; }

        /// <summary>Full sizes in cm: one for a square, a round or a hexagon, two otherwise.</summary>
        public IReadOnlyList<double> Sizes { get; set; } = [];

        public int SizeAt { get; set; } = -1;

        public string? Shape { get; set; }

        public int ShapeAt { get; set; } = -1;

        public string? Noun { get; set; }

        public bool IsCoaster { get; set; }

        public bool AcrossCorners { get; set; }

        public bool IsEmpty => Count is null && Sizes.Count == 0 && Shape is null && Noun is null;

        public bool IsComplete => Sizes.Count > 0 || IsCoaster;
    }
}
