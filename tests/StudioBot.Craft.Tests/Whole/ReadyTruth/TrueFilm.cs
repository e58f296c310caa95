namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>
/// One piece's paint as it really dries, a square metre of it: as open water until the particles nearly touch,
/// then through a skin that grows and closes. Not the estimate's model in any step.
/// </summary>
/// <remarks>
/// The two stages, and vapour crossing a dry layer of packed particles, are Kiil's (Prog. Org. Coat. 57, 2006),
/// who found one effective diffusivity for open films; transfer into still air, 1.5e-8 to 3e-8 kg/(m²·s·Pa), and
/// that a fused skin lets through far less than a porous one are from memory. The constants of this truth are ours,
/// set so that pieces take the one to three weeks of common practice. The skin is as thick as the dry film: fused,
/// it has no pores. Solvent and sorption are in the mass and not in the line.
/// </remarks>
internal sealed class TrueFilm
{
    private const double WaterDensity = 998;        // kg/m³ at 20 °C, water tables
    private const double SolidsDensity = 1200;      // kg/m³, polymer with some pigment (from memory)
    private const double Packing = 0.70;            // solids by volume where particles touch
    private const double Transfer = 1.8e-8;         // kg/(m²·s·Pa)
    private const double Permeability = 4.6e-13;    // kg/(m·s·Pa) at 2.5 mm
    private const double LogWood = -0.2;            // wood gives its water back through the film
    private const double ReadyShare = 0.01;         // the line: 1 % of the water (common practice)
    private const double Sorbed = 0.024;            // of the dry film, at most, in wet air
    private const double SorptionHours = 24;
    private const double Hour = 3600;

    private readonly double _transfer;
    private readonly double _permeability;
    private readonly double _skin;
    private readonly double _closing;
    private readonly double _power;
    private readonly double _all;
    private readonly double _solvent;
    private readonly double _solventHours;
    private readonly double _takesUp;

    private double _water;
    private double _humidity;
    private int _hours;

    /// <summary>A film of this real thickness, poured into air of this humidity.</summary>
    public TrueFilm(Dice dice, StudioTraits studio, double millimetres, bool onWood, double humidity)
    {
        var metres = millimetres / 1000;
        var solids = 0.32 + dice.About(0.03);
        _transfer = Transfer * Math.Exp(studio.LogTransfer + dice.About(0.10));
        _permeability = Permeability * Math.Pow(millimetres / 2.5, studio.SkinWithFilm)
            * Math.Exp(studio.LogSkin + dice.About(0.20) + (onWood ? LogWood : 0));
        _skin = metres * solids;
        _closing = dice.Between(1.2, 1.7) * WaterDensity * (metres * solids / Packing) * (1 - Packing);
        _power = dice.Between(0.2, 0.7);
        _all = _water = WaterDensity * metres * (1 - solids);
        _solvent = dice.Between(0.005, 0.025) * _all;
        _solventHours = 12 * 24 * Math.Exp(dice.About(0.4));
        _takesUp = dice.Between(0, Sorbed) * SolidsDensity * metres * solids;
        _humidity = humidity;
    }

    /// <summary>Whether no more than 1 % of the water is left.</summary>
    public bool IsReady => _water <= ReadyShare * _all;

    /// <summary>What a square metre of it weighs above its dry mass, kg.</summary>
    public double Above => _water + _solvent * Math.Exp(-_hours / _solventHours) + _takesUp * _humidity;

    /// <summary>An hour in air that lacks so much, Pa, and is so humid, 0 to 1.</summary>
    public void Dry(double pull, double humidity)
    {
        _water = Math.Max(0, _water - Conductance() * pull * Hour);
        _humidity += (humidity - _humidity) / SorptionHours;
        _hours++;
    }

    private double Conductance()
    {
        var share = _water / _closing;
        if (share >= 1)
        {
            return _transfer;
        }

        var crossed = _skin * (0.15 + 0.85 * (1 - share));
        return 1 / (1 / _transfer + crossed / (_permeability * Math.Pow(Math.Max(share, 0.02), _power)));
    }
}
