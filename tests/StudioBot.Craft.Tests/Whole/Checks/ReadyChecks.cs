using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole.Checks;

internal static class ReadyChecks
{
    public static readonly IReadOnlyDictionary<string, Func<Inputs, string>> All =
        new Dictionary<string, Func<Inputs, string>>
        {
            ["ready.equivalent_days"] = given =>
                Answer.Number(Posterior(given).Quantile(given.Number("q")).TotalDays),
            ["ready.days_left"] = given =>
                Answer.Number(Posterior(given).Left(given.Number("q"), Elapsed(given), Pace(given)).TotalDays),
            ["ready.probability"] = given => Answer.Number(Posterior(given).ProbabilityAt(Elapsed(given))),
            ["ready.studio_shift"] = given => Answer.Number(Taught(given).Mean),
            ["ready.studio_sd"] = given => Answer.Number(Taught(given).Deviation),
            ["ready.verdict"] = given => ReadyOutlook.Of(
                Piece(given), Elapsed(given), Pace(given), Rooms.Read(given.Text("room")), StudioShift.Untaught)
                is ReadyOutlook.NoDay ? "no_figure" : "figure",
        };

    private static ReadyPosterior Posterior(Inputs given) => new(Piece(given), given.Has("b")
        ? new StudioShift(given.Number("b"), given.Number("b_sd"), 3)
        : StudioShift.Untaught);

    private static DryingPiece Piece(Inputs given)
    {
        var water = Mass.FromGrams(given.Has("water_g") ? given.Number("water_g") : 150);
        return new DryingPiece(Length.FromMillimetres(given.Number("film_mm")), water)
        {
            Words = given.Has("notyet_day")
                ? [new MakerWord(Dried(given, given.Number("notyet_day")), MakerSays.NotYet)]
                : [],
            Weighings = [.. Weighings(given)],
            Deviation = Mass.FromGrams(given.Has("sigma_g") ? given.Number("sigma_g") : 0.1),
            Dry = given.Has("m_inf_g")
                ? new DryMass(Mass.FromGrams(given.Number("m_inf_g")), Mass.FromGrams(given.Number("m_inf_sd_g")))
                : null,
        };
    }

    // Rows that only name the last masses mean weighings a day apart, the skin closed.
    private static IEnumerable<Weighing> Weighings(Inputs given) =>
        given.Has("weigh_day")
            ? given.Numbers("weigh_day").Zip(
                given.Numbers("weigh_g"), (day, g) => new Weighing(Dried(given, day), Mass.FromGrams(g)))
            : given.Has("last_g")
                ? given.Numbers("last_g").Select((g, i) => new Weighing(TimeSpan.FromDays(3 + i), Mass.FromGrams(g)))
                : [];

    private static TimeSpan Elapsed(Inputs given) => Dried(given, given.Has("day") ? given.Number("day") : 0);

    private static TimeSpan Dried(Inputs given, double days) => TimeSpan.FromDays(days) * Pace(given).Rate;

    private static RoomPace Pace(Inputs given) => RoomPace.Of(Rooms.Read(given.Text("room")));

    private static StudioShift Taught(Inputs given) => StudioDrying.From(
        [.. given.Texts("pieces").Select(text => new Lesson(Finished(text)))]).For(Length.FromMillimetres(2.5), null);

    // 2.6@notyet9&dry11: a film in mm, then words on equivalent days.
    private static DryingPiece Finished(string text)
    {
        var parts = text.Split('@');
        return new DryingPiece(Length.FromMillimetres(Inputs.Parse(parts[0])), Mass.FromGrams(150))
        {
            Words = [.. parts[1].Split('&').Select(word => word.StartsWith("notyet", StringComparison.Ordinal)
                ? new MakerWord(TimeSpan.FromDays(Inputs.Parse(word[6..])), MakerSays.NotYet)
                : new MakerWord(TimeSpan.FromDays(Inputs.Parse(word[3..])), MakerSays.Dry))],
        };
    }
}
