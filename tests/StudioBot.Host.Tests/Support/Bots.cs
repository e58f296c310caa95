using StudioBot.Host.Settings;
using StudioBot.Host.Telegram;

namespace StudioBot.Host.Tests.Support;

/// <summary>The real client library, pointed at the stand-in.</summary>
internal static class Bots
{
    public static BotClients At(StandIn standIn, string token = StandIn.Token) =>
        new(Settings(standIn, token));

    public static StudioSettings Settings(StandIn standIn, string token = StandIn.Token) =>
        new("/nowhere", new Secret(token), standIn.Url) { HealthPort = 0 };
}
