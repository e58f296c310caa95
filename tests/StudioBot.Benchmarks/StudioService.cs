using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using StudioBot.Craft.Practice;
using StudioBot.Host.Sending;
using StudioBot.Host.Settings;
using StudioBot.Host.Verbs;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Members;
using Settings = StudioBot.Host.Settings.StudioSettings;

namespace StudioBot.Benchmarks;

/// <summary>The real service of a studio with many members, with or without its own pace.</summary>
internal static class StudioService
{
    /// <summary>The first member's account; the others follow.</summary>
    public const long FirstMember = 1000;

    /// <summary>What the trade assumes, as shipped.</summary>
    public static TradePractice Practice { get; } =
        TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config")) is TradeReading.Read read
            ? read.Practice
            : throw new InvalidOperationException("The shipped trade values do not load.");

    /// <summary>The moment at which all of it plays: an hour ago, so that nothing is said in the future.</summary>
    public static DateTimeOffset Now { get; } = TimeProvider.System.GetUtcNow().AddHours(-1);

    /// <summary>A new studio in this folder, whose members are the given number of accounts.</summary>
    public static void Found(string folder, int members, DateTimeOffset at)
    {
        Directory.CreateDirectory(folder);
        using var file = StudioFile.Open(Path.Combine(folder, "studio.db"));
        file.Write(session =>
        {
            NewStudio.WriteInto(session, Practice, "Europe/Vienna", at);
            for (var number = 0; number < members; number++)
            {
                var member = session.Members.Add($"M{number}", number == 0 ? Role.Steward : Role.Member, at);
                session.Members.AddAccount(FirstMember + number, member.Id, at);
            }
        });
    }

    /// <summary>Serves it until the process is ended.</summary>
    public static async Task Run(string folder, string url, bool isPaced)
    {
        var settings = new Settings(folder, new Secret(ChatServer.Token), new Uri(url)) { HealthPort = 0 };
        using var file = StudioFile.Open(settings.StudioPath);
        var builder = ServeVerb.Built(settings, Workplace.Here(), file, Practice);
        if (!isPaced)
        {
            builder.Services.AddSingleton(new Pace(new RacingClock()));
        }

        using var host = builder.Build();
        await host.RunAsync();
    }

    // For it a microsecond is a second, so no limit is ever reached.
    private sealed class RacingClock : TimeProvider
    {
        public override long TimestampFrequency => System.TimestampFrequency / 1_000_000;

        public override long GetTimestamp() => System.GetTimestamp();
    }
}
