using StudioBot.Chat.Replies;
using StudioBot.Host.Settings;
using StudioBot.Records;
using StudioBot.Records.Sample;

namespace StudioBot.Chat.Tests.Support;

/// <summary>The invented studio with the shipped trade values, as the program opens it.</summary>
internal static class Sample
{
    // One connection holds the studio, and tests run side by side.
    private static readonly Lock OneAtATime = new();

    private static readonly StudioFile File = Written();

    public static readonly Conversation Conversation = new(Catalogue.Find());

    public static readonly Studio Studio = File.Read(view => new Studio(view, Practice, isSample: true));

    /// <summary>Wednesday of week 48, ten in the morning.</summary>
    public static readonly DateTime Now = new(2026, 11, 25, 10, 0, 0, DateTimeKind.Unspecified);

    public static Turn Turn(string words, ChatKind chat = ChatKind.Private) =>
        new(words, chat, new Speaker("Mira", IsSteward: true), Now);

    public static Heard Listen(string words, ChatKind chat = ChatKind.Private) =>
        Conversation.Hear(Turn(words, chat), Studio);

    public static HeardLine Hear(string words, ChatKind chat = ChatKind.Private) => HeardLine.From(Listen(words, chat));

    public static Reply? Answer(string words, ChatKind chat = ChatKind.Private)
    {
        lock (OneAtATime)
        {
            return Conversation.Answer(Turn(words, chat), Studio);
        }
    }

    /// <summary>The trade values as shipped.</summary>
    public static Craft.Practice.TradePractice Practice =>
        TradeSettings.Load(Path.Combine(AppContext.BaseDirectory, "config")) is TradeReading.Read read
            ? read.Practice
            : throw new InvalidOperationException("The shipped trade values do not load.");

    private static StudioFile Written()
    {
        var file = StudioFile.OpenInMemory();
        file.Write(session => SampleStudio.WriteInto(session));
        return file;
    }
}
