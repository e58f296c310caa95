using StudioBot.Craft.Air;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// The open film's drying in two stages: at first as open water, then through its own packed layer. For ranking films
/// and
/// rooms, never for a ready day: skins, rims and slow solvents add days to weeks.
/// </summary>
/// <param name="SolidsByVolume">Polymer and pigment in the wet film by volume, above 0 and below <paramref
/// name="Packing"/>.</param>
/// <param name="Transfer">kg/(m²·s·Pa) from the surface into still room air; 1.5e-8 to 3e-8 (from memory).</param>
/// <param name="Diffusivity">m²/s of vapour through the packed layer; 7e-7 (Kiil 2006).</param>
/// <param name="Packing">Solids by volume at which the particles touch; 0.74 (Kiil 2006).</param>
public sealed record TwoStage(
    double SolidsByVolume = 0.30, double Transfer = 2.2e-8, double Diffusivity = 7e-7, double Packing = 0.74)
{
    private const double WaterDensity = 998;        // kg/m³ at 20 °C, water tables
    private const double VapourConstant = 461.5;    // J/(kg·K)

    /// <summary>
    /// How long the open film of this wet thickness dries in this air; none where drying stands still.
    /// </summary>
    /// <remarks>
    /// W_c/(k·Δe) + (W_f/Δe)·(1/k + R_v·T·L/(2D)), L = h·φ/0.74, W_f the water between packed particles.
    /// </remarks>
    /// <exception cref="InvalidOperationException">The solids are not above 0 and below the packing.</exception>
    public Finding<TimeSpan> In(RoomAir air, Length film)
    {
        if (SolidsByVolume <= 0 || SolidsByVolume >= Packing || Packing >= 1)
        {
            throw new InvalidOperationException("Solids lie above zero and below the packing, the packing below one.");
        }

        if (air.Deficit <= DryingSpeed.StandsStillAt)
        {
            return new Finding<TimeSpan>.None(NoFigure.OutOfRange, DryingSpeed.TooDamp, DryingSpeed.WarmOrDry);
        }

        var layer = film.Metres * SolidsByVolume / Packing;
        var water = WaterDensity * film.Metres * (1 - SolidsByVolume);
        var between = WaterDensity * layer * (1 - Packing);
        var pull = air.Deficit.Pascals;
        var open = (water - between) / (Transfer * pull);
        var packed = between / pull
            * (1 / Transfer + VapourConstant * air.Temperature.Kelvin * layer / (2 * Diffusivity));
        return new Finding<TimeSpan>.Found(TimeSpan.FromSeconds(open + packed));
    }
}
