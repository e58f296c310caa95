using System.Security.Cryptography;

namespace StudioBot.Host.Turns;

/// <summary>Codes that somebody types from a screen, and nobody can guess.</summary>
internal static class Codes
{
    // Nothing that looks like a figure or another letter; with figures among them some would read as amounts.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>A fresh one; each letter is 4.6 bits.</summary>
    public static string New(int length) => RandomNumberGenerator.GetString(Letters, length);
}
