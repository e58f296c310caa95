using StudioBot.Chat;
using StudioBot.Craft.Practice;
using StudioBot.Host.Settings;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.House;
using StudioBot.Records.Members;

namespace StudioBot.Host.Tests.Support;

/// <summary>Studios as they begin, by the shipped trade values, in Vienna.</summary>
internal static class Studios
{
    public const string Zone = "Europe/Vienna";

    public static TradePractice Practice { get; } =
        TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config")) is TradeReading.Read read
            ? read.Practice
            : throw new InvalidOperationException("The shipped trade values do not load.");

    /// <summary>Founds a studio with these members, the first of them its steward.</summary>
    public static void Found(StudioFile file, DateTimeOffset at, params (long Account, string Name)[] members) =>
        file.Write(session =>
        {
            NewStudio.WriteInto(session, Practice, Zone, at);
            foreach (var (account, name) in members)
            {
                var role = session.Members.All().Count == 0 ? Role.Steward : Role.Member;
                session.Members.AddAccount(account, session.Members.Add(name, role, at).Id, at);
            }
        });

    /// <summary>What answers in a studio that is nobody's invention.</summary>
    public static Answering Answering() =>
        new(new Conversation(Catalogue.Find()), Practice, isSample: false, StandIn.BotName);
}
