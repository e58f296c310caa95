using System.Security.Cryptography;
using StudioBot.Chat.Replies;

namespace StudioBot.Host.Turns;

/// <summary>What is said when something of ours broke.</summary>
internal static class Apology
{
    private const int Letters = 3;

    /// <summary>A short mark that stands in the reply and in the log; no two of its characters look alike.</summary>
    public static string NewMark() => RandomNumberGenerator.GetString("ABCDEFGHJKLMNPQRSTUVWXYZ23456789", Letters);

    /// <summary>The words.</summary>
    public static Reply With(string mark) =>
        new(new Block.Line($"That broke here, not at your end. Nothing recorded. Mark {mark}.")) { IsTrouble = true };
}
