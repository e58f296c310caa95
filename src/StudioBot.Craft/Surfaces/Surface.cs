using StudioBot.Craft.Units;

namespace StudioBot.Craft.Surfaces;

/// <summary>A shape to be covered, in full sizes; what its face and rim measure is plane geometry.</summary>
public abstract record Surface
{
    private Surface()
    {
    }

    /// <summary>The top.</summary>
    public abstract Area Face { get; }

    /// <summary>Once around the edge.</summary>
    public abstract Length Rim { get; }

    /// <summary>The edges of a surface this deep.</summary>
    public Area Sides(Length depth) => Rim * depth;

    /// <summary>A square or rectangle.</summary>
    public sealed record Panel(Length Width, Length Height) : Surface
    {
        /// <inheritdoc/>
        public override Area Face => Width * Height;

        /// <inheritdoc/>
        public override Length Rim => 2 * (Width + Height);

        /// <summary>All four sides alike.</summary>
        public bool IsSquare => Width == Height;
    }

    /// <summary>A round.</summary>
    public sealed record Disc(Length Diameter) : Surface
    {
        /// <inheritdoc/>
        public override Area Face => Math.PI / 4 * (Diameter * Diameter);

        /// <inheritdoc/>
        public override Length Rim => Math.PI * Diameter;
    }

    /// <summary>An ellipse, by its two full axes.</summary>
    public sealed record Oval(Length Width, Length Height) : Surface
    {
        /// <inheritdoc/>
        public override Area Face => Math.PI / 4 * (Width * Height);

        /// <inheritdoc/>
        /// <remarks>Ramanujan's second approximation (from memory), good to 1e-6 up to 5:1.</remarks>
        public override Length Rim
        {
            get
            {
                var sum = (Width.Metres + Height.Metres) / 2;
                var h = Math.Pow((Width.Metres - Height.Metres) / 2 / sum, 2);
                return Length.FromMetres(Math.PI * sum * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h))));
            }
        }
    }

    /// <summary>A regular hexagon, by its width across flats.</summary>
    public sealed record Hexagon(Length AcrossFlats) : Surface
    {
        /// <inheritdoc/>
        public override Area Face => Math.Sqrt(3) / 2 * (AcrossFlats * AcrossFlats);

        /// <inheritdoc/>
        public override Length Rim => 2 * Math.Sqrt(3) * AcrossFlats;

        /// <summary>From the width across corners: across flats is √3/2 of it.</summary>
        public static Hexagon FromAcrossCorners(Length acrossCorners) => new(Math.Sqrt(3) / 2 * acrossCorners);
    }
}
