using StudioBot.Craft.Units;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Members;

namespace StudioBot.Records.Tests;

/// <summary>Acts as tests begin them.</summary>
public static class Saying
{
    public static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    /// <summary>So much of something poured.</summary>
    public static Amount Ml(double millilitres) => new Amount.ByVolume(Volume.FromMillilitres(millilitres));

    /// <summary>Somebody, or the studio itself, says something.</summary>
    public static Act Said(
        this StudioSession session, string kind, Member? author = null, string? words = null, double minute = 0) =>
        session.Acts.Begin(new NewAct(kind, author, words ?? kind, Morning.AddMinutes(minute)));

    /// <summary>Somebody, or the studio itself, takes an act back.</summary>
    public static Undone TakeBack(this StudioSession session, Act act, Member? author = null) =>
        session.Undo.Take(act.Id, new NewAct("undo", author, "undo", Morning.AddHours(1)));
}
