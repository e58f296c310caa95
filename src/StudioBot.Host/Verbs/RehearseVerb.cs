using StudioBot.Craft.Practice;
using StudioBot.Host.Rehearsal;

namespace StudioBot.Host.Verbs;

/// <summary><c>rehearse FILE</c>: plays a talk on a virtual clock in a throw-away studio.</summary>
internal sealed class RehearseVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "rehearse";

    /// <inheritdoc/>
    public override string Usage => "rehearse FILE [--json] [--files DIR]";

    /// <inheritdoc/>
    public override string Says => "Plays a talk on a virtual clock; 1 where an expectation fails.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--json", "--files"];

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (1, 1);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var path = said.Words[0];
        if (!File.Exists(path))
        {
            place.Streams.Error.WriteLine($"There is no file {path}. Name a talk:  studiobot {Usage}");
            return Task.FromResult(ExitCode.CommandLine);
        }

        return Opening.WithPractice(
            place, practice => Task.FromResult(Play(File.ReadLines(path), practice, said, place)));
    }

    /// <summary>Plays these lines.</summary>
    public static ExitCode Play(IEnumerable<string> lines, TradePractice practice, Invocation said, Workplace place)
    {
        var page = new TalkPage(place.Streams.Out, place.Streams.Error, said.Json, said.Files);
        using var player = new TalkPlayer(practice, page);
        try
        {
            player.Play(TalkReader.Read(lines));
            page.End();
        }
        catch (TalkException wrong)
        {
            place.Streams.Error.WriteLine(wrong.Message);
            return ExitCode.CheckFailed;
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException && said.Files is not null)
        {
            place.Streams.Error.WriteLine($"Can't keep files in {said.Files}: {no.Message}");
            return ExitCode.CannotWrite;
        }

        return player.Failures == 0 ? ExitCode.Done : ExitCode.CheckFailed;
    }
}
