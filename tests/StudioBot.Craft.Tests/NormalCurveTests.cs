using CsCheck;
using MathNet.Numerics.Distributions;

namespace StudioBot.Craft.Tests;

/// <summary>Compared with a numerics library.</summary>
public sealed class NormalCurveTests
{
    [Fact]
    public void The_share_below_a_point_agrees_with_a_numerics_library() =>
        Gen.Double[-8, 8].Sample(z => Math.Abs(NormalCurve.Below(z) - Normal.CDF(0, 1, z)) < 1e-12);

    [Fact]
    public void The_quantile_agrees_with_a_numerics_library() =>
        Gen.Double[1e-6, 1 - 1e-6].Sample(p => Math.Abs(NormalCurve.Quantile(p) - Normal.InvCDF(0, 1, p)) < 1e-8);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Certainty_has_no_quantile(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalCurve.Quantile(share));
}
