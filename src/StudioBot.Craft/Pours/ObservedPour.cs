using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>One of the studio's own pours, as learning sees it.</summary>
/// <param name="Used">What it took per face, see <see cref="Film.Need"/>.</param>
/// <param name="FaceOverRim">Of the piece, see <see cref="RunOff.FaceOverRim"/>.</param>
/// <param name="End">Whether that was enough.</param>
public sealed record ObservedPour(Length Used, Length FaceOverRim, PourEnd End = PourEnd.Enough);
