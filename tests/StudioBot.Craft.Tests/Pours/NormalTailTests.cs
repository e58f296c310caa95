using CsCheck;
using MathNet.Numerics;
using StudioBot.Craft.Pours;

namespace StudioBot.Craft.Tests.Pours;

public sealed class NormalTailTests
{
    [Fact]
    public void It_agrees_with_a_library_of_numerics() =>
        Gen.Double[-36, 8].Sample(z =>
            Assert.Equal(
                Math.Log(SpecialFunctions.Erfc(-z / Math.Sqrt(2)) / 2), NormalTail.LogBelow(z), 5e-6));

    [Fact]
    public void Far_out_it_is_still_finite() => Assert.True(double.IsFinite(NormalTail.LogBelow(-100)));
}
