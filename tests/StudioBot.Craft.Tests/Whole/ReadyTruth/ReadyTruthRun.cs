using System.Globalization;

namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>
/// All studios of a run under all policies. <c>STUDIOBOT_SEED</c> sets the seed, <c>STUDIOBOT_STUDIOS</c> how many
/// studios of eight pieces; the result depends on these two and on nothing else, least of all on the cores.
/// </summary>
public sealed class ReadyTruthRun
{
    private const int UsualSeed = 20260302;
    private const int UsualStudios = 300;

    private readonly StudioRun[] _studios;

    /// <summary>Runs them, on all cores.</summary>
    public ReadyTruthRun()
    {
        Seed = Setting("STUDIOBOT_SEED", UsualSeed);
        _studios = new StudioRun[Setting("STUDIOBOT_STUDIOS", UsualStudios)];
        Parallel.For(0, _studios.Length, number => _studios[number] = StudioRun.Of(new TrueStudio(Seed, number)));
        AtPour = new LookScore([.. _studios.SelectMany(studio => studio.AtPour)]);
        AfterThree = new LookScore([.. _studios.SelectMany(studio => studio.AfterThree)]);
        AfterSix = new LookScore([.. _studios.SelectMany(studio => studio.AfterSix)]);
    }

    /// <summary>The seed that repeats it.</summary>
    public int Seed { get; }

    internal LookScore AtPour { get; }

    internal LookScore AfterThree { get; }

    internal LookScore AfterSix { get; }

    internal PolicyScore Of(Policy policy) => new([.. _studios.Select(studio => studio.Outcomes[policy])]);

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var value)
            ? value
            : otherwise;
}
