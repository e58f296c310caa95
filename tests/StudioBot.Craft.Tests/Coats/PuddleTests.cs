using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class PuddleTests
{
    [Fact]
    public void A_puddle_that_wets_well_lies_flatter()
    {
        // From memory: 2·√(γ/(ρ·g))·sin(θ/2), so 60° stands to 90° as sin 30° to sin 45°.
        var density = Density.FromGramsPerMillilitre(1.1);
        var ratio = new Puddle(density, ContactDegrees: 60).LevelHeight / new Puddle(density).LevelHeight;

        Assert.Equal(Math.Sqrt(0.5), ratio, 9);
    }
}
