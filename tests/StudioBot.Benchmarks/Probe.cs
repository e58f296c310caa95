using System.Diagnostics;
using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Chat;
using StudioBot.Host.Sending;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Benchmarks;

internal static class Probe
{
    public static void Run()
    {
        var folder = Directory.CreateTempSubdirectory("studiobot-probe-").FullName;
        StudioService.Found(folder, 200, StudioService.Now.AddDays(-1));
        using var file = StudioFile.Open(Path.Combine(folder, "studio.db"));
        var answering = new Answering(new Conversation(Catalogue.Find()), StudioService.Practice, false, "studio_bot");
        var clerk = new Clerk(file, 123456789, answering, NullLogger<Clerk>.Instance);
        var spent = new Dictionary<string, (double Ms, int Count, double Kb)>();
        T Timed<T>(string what, Func<T> work)
        {
            var bytes = GC.GetAllocatedBytesForCurrentThread();
            var began = Stopwatch.GetTimestamp();
            var result = work();
            var old = spent.GetValueOrDefault(what);
            spent[what] = (old.Ms + Stopwatch.GetElapsedTime(began).TotalMilliseconds, old.Count + 1, old.Kb + (GC.GetAllocatedBytesForCurrentThread() - bytes) / 1024.0);
            return result;
        }

        string[] words = ["bought 100 x 1 L white 500.00", "ratio 3:1 250 ml", "resin 30x40 2mm", "dew 20C 60%", "convert 8 fl oz to ml", "resin 600 ml 2:1",
            "flow ford4 22 s", "ratio 2:1 have 120 A 50 B", "spin 30cm round 90rpm 15s", "stock white", "convert 70F to C", "used"];
        for (var n = 0; n < 3000; n++)
        {
            if (n == 1500)
            {
                spent.Clear();
            }

            var say = n == 0 ? words[0] : words[1 + n % (words.Length - 1)];
            say = say == "used" ? $"used {11 + n / 200} ml white" : say;
            var who = 1000 + n % 200;
            var at = StudioService.Now.AddSeconds(n / 200 * 4);
            var raw = $$"""{"update_id":{{n + 1}},"message":{"message_id":{{n + 1}},"date":{{at.ToUnixTimeSeconds()}},"chat":{"id":{{who}},"type":"private"},"from":{"id":{{who}},"is_bot":false,"first_name":"M"},"text":"{{say}}"} }""";
            Timed("store", () => file.Write(s => s.Inbox.Store(new Incoming(n + 1, who, "message", raw) { MessageId = n + 1 }, at)));
            var row = Timed("next", () => file.Write(s => s.Inbox.Next()))[0];
            Timed("settle " + say.Split(' ')[0], () => clerk.Settle(row, at));
            while (Timed("claim", () => file.Write(s => s.Post.Claim(at))) is { } post)
            {
                Timed("letter", () => file.Write(s => Letter.Of(post, s.Post)));
                Timed("sent", () => { file.Write(s => s.Post.Sent(post.Id, at, n)); return 0; });
            }
            Timed("rest", () => file.Write(s => s.Post.NextTryAt()));
            Timed("empty write", () => file.Write(s => 0));
        }

        foreach (var (what, (ms, count, kb)) in spent.OrderByDescending(one => one.Value.Ms))
        {
            Console.WriteLine($"{what,-20} {ms / count,8:0.000} ms  {kb / count,8:0.0} KiB  x{count}");
        }
    }
}
