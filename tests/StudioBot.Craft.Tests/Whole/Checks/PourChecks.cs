using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class PourChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["pour.total"] = Total,
            ["pour.observed_need"] = given => Answer.Of(
                Film.Need(Millilitres(given, "mixed_mL"), Millilitres(given, "left_mL"), Face(given)),
                need => need.Millimetres),
            ["pour.laid_film"] = given => Answer.Of(
                Film.Laid(
                    Millilitres(given, "mixed_mL"),
                    Millilitres(given, "left_mL"),
                    Millilitres(given, "caught_mL"),
                    Face(given)),
                film => film.Millimetres),
            ["pour.runoff_observed"] = given => Answer.Of(
                Film.RunOff(
                    Millilitres(given, "mixed_mL"), Millilitres(given, "left_mL"), Millilitres(given, "caught_mL")),
                share => share),
            ["pour.runoff_scaled"] = given => Answer.Number(RunOff.On(given.Surface(), given.Number("runoff"))),
            ["pour.posterior_mean"] = given => Answer.Number(Learnt(given).Mean.Millimetres),
            ["pour.posterior_mean_short"] = given => Answer.Number(Learnt(given).Mean.Millimetres),
            ["pour.posterior_sd_short"] = given => Answer.Number(Learnt(given).SdOfMean.Millimetres),
            ["pour.posterior_sd_of_mean"] = given => Answer.Number(Learnt(given).SdOfMean.Millimetres),
            ["pour.predictive_sd"] = given => Answer.Number(Learnt(given).NextPourSd.Millimetres),
        };

    // A surface whose rim stands to its face as the reference's does: there the run-off is as stated. Rounds of
    // 30 cm have the same rim to face as the square of 30 cm.
    private static string Total(Inputs given)
    {
        var laid = Length.FromMillimetres(given.Number("laid_mm"));
        var runOff = given.Number("runoff");
        var film = new FilmRange(laid, laid, laid);
        var technique = new Technique(
            "plain", [], [new Layer(LayerKind.Colours, film)], film, runOff, runOff, runOff);
        return Answer.Number(
            PourAmounts.For(technique, new SurfaceSet(given.Surface()), colours: 1).Need.Millilitres);
    }

    private static FilmEstimate Learnt(Inputs given)
    {
        var prior = new FilmPrior(
            given.Has("prior_mm") ? Millimetres(given.Number("prior_mm")) : Millimetres(3),
            given.Number("prior_weight"),
            given.Has("sigma_mm") ? Millimetres(given.Number("sigma_mm")) : FilmPrior.UsualSpread);
        var used = given.Has("observed_mm")
            ? given.Numbers("observed_mm")
            : Enumerable.Repeat(3.0, (int)given.Number("n"));
        var tooLittle = given.Has("ran_short_mm") ? given.Numbers("ran_short_mm") : [];
        return FilmEstimate.From(
            prior,
            [.. used.Select(x => Pour(x, PourEnd.Enough)), .. tooLittle.Select(x => Pour(x, PourEnd.RanShort))]);
    }

    private static ObservedPour Pour(double used, PourEnd end) =>
        new(Millimetres(used), RunOff.FaceOverRim(RunOff.Reference), end);

    private static Length Millimetres(double value) => Length.FromMillimetres(value);

    private static Area Face(Inputs given) => Area.FromSquareCentimetres(given.Number("area_cm2"));

    private static Volume Millilitres(Inputs given, string key) => Volume.FromMillilitres(given.Number(key));
}
