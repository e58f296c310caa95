using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Sharing;

/// <summary>A sum that an account gained or gave.</summary>
internal static class SignedSum
{
    /// <summary>+24.90, −0.26, 0.00.</summary>
    public static string Of(Money sum) => sum.Cents > 0 ? $"+{sum}" : Plain(sum);

    /// <summary>24.90, −0.26.</summary>
    public static string Plain(Money sum) => sum.Cents < 0 ? $"−{-sum}" : sum.ToString();
}
