using System.Security.Cryptography;
using System.Text;

namespace StudioBot.Records.Members;

/// <summary>Codes that let somebody in stand in the file as hashes only; each is long and random, so no salt.</summary>
internal static class CodeHash
{
    /// <summary>SHA-256 of the code's letters, in 64 hexadecimal digits.</summary>
    public static string Of(string code) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(code)));

    /// <summary>Whether two are the same, told in a time that does not depend on where they differ.</summary>
    public static bool Same(string one, string other) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(one), Encoding.UTF8.GetBytes(other));
}
