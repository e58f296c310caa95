using System.Text.RegularExpressions;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Reminders;
using StudioBot.Records.House;
using StudioBot.Records.Members;
using StudioBot.Records.Sample;

namespace StudioBot.Host.Rehearsal;

/// <summary>Plays a talk from its first line to its last.</summary>
internal sealed partial class TalkPlayer : IDisposable
{
    private const long FirstAccount = 101;

    private static readonly DateTime UsualStart = new(2026, 3, 2, 9, 0, 0, DateTimeKind.Unspecified);

    private readonly TradePractice practice;
    private readonly TalkPage page;
    private readonly Dictionary<string, Player> players = [];
    private readonly List<HeardMessage> heard = [];

    private Stage? stage;
    private bool isSample;
    private StudioZone? zone;
    private IReadOnlyList<(string Name, bool IsSteward)> members = [("pia", true)];
    private bool isFounded;
    private bool isTelling;

    /// <summary>A talk that is about to be played.</summary>
    public TalkPlayer(TradePractice practice, TalkPage page) => (this.practice, this.page) = (practice, page);

    /// <summary>How many expectations failed.</summary>
    public int Failures { get; private set; }

    /// <summary>Plays it.</summary>
    /// <exception cref="TalkException">A line that can't be played.</exception>
    public void Play(IEnumerable<TalkLine> lines)
    {
        foreach (var line in lines)
        {
            Play(line);
            isTelling = line is TalkLine.Told;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stage?.Dispose();

    private void Play(TalkLine line)
    {
        switch (line)
        {
            case TalkLine.Studio studio:
                RefuseLate(line);
                isSample = studio.IsSample;
                break;
            case TalkLine.Zone named:
                RefuseLate(line);
                zone = new StudioZone(TimeZoneInfo.TryFindSystemTimeZoneById(named.Name, out var known)
                    ? known
                    : throw new TalkException(line.Number, $"“{named.Name}” is no zone; try  zone Europe/Vienna"));
                break;
            case TalkLine.Members named:
                RefuseLate(line);
                members = named.All;
                break;
            case TalkLine.At at:
                GoTo(at);
                break;
            case TalkLine.Later later:
                Anew(line);
                OnStage().MoveTo(OnStage().Now + later.By);
                break;
            case TalkLine.Says says:
                Say(says);
                break;
            case TalkLine.Presses presses:
                Anew(line);
                if (!OnStage().Press(PlayerOf(presses.Who), presses.Label, presses.InGroup))
                {
                    Fail(line, $"{presses.Who} sees no button that begins with “{presses.Label}”");
                }

                break;
            case TalkLine.Told told:
                page.Tell(told, opens: !isTelling);
                break;
            case TalkLine.Stop:
                page.Event(OnStage().Now, line, zone!);
                OnStage().Stop();
                break;
            case TalkLine.Start:
                page.Event(OnStage().Now, line, zone!);
                OnStage().Start();
                break;
            case TalkLine.Crash crash:
                OnStage().CrashAt(crash.Point);
                break;
            case TalkLine.Must must when !heard.Exists(message => Holds(message, must.Words)):
                Fail(line, $"expected “{must.Words}”");
                break;
            case TalkLine.MustNot { Words: "" } when heard.Count > 0:
                Fail(line, "expected silence");
                break;
            case TalkLine.MustNot { Words: not "" } not when heard.Exists(message => Holds(message, not.Words)):
                Fail(line, $"expected no “{not.Words}”");
                break;
        }
    }

    private void GoTo(TalkLine.At at)
    {
        var wall = zone ??= new StudioZone(TimeZoneInfo.Utc);
        var moment = InstantOf(wall, at.Local);
        if (!isFounded)
        {
            Found(moment);
        }

        if (moment < OnStage().Now)
        {
            throw new TalkException(at.Number, "the clock only goes forwards");
        }

        Anew(at);
        OnStage().MoveTo(moment);
    }

    private void Say(TalkLine.Says says)
    {
        Anew(says);
        var who = PlayerOf(says.Who);
        if (!says.Edits)
        {
            OnStage().Say(who, says.InGroup, says.Words, says.HasPhoto);
        }
        else if (!OnStage().Correct(who, says.InGroup, says.Words))
        {
            throw new TalkException(says.Number, $"{says.Who} has written nothing yet that could be corrected");
        }
    }

    private void Anew(TalkLine line)
    {
        heard.Clear();
        page.Event(OnStage().Now, line, zone!);
    }

    private void Fail(TalkLine line, string why)
    {
        Failures++;
        page.Failed(line, why, heard);
    }

    private Stage OnStage()
    {
        if (!isFounded)
        {
            Found(isSample ? SampleStudio.LastRecord : InstantOf(zone ?? new StudioZone(TimeZoneInfo.Utc), UsualStart));
        }

        return stage!;
    }

    private void Found(DateTimeOffset now)
    {
        isFounded = true;
        stage = new Stage(practice, isSample) { Sent = Hear };
        stage.Found(now, session =>
        {
            if (isSample)
            {
                SampleStudio.WriteInto(session);
                zone ??= new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(session.Studio.Settings()!.Zone));
                session.Studio.Change(session.Studio.Settings()! with { Zone = zone.Name });
                foreach (var member in session.Members.All())
                {
                    session.Members.AddAccount(PlayerOf(member.Name.ToLowerInvariant()).Account, member.Id, now);
                }
            }
            else
            {
                zone ??= new StudioZone(TimeZoneInfo.Utc);
                NewStudio.WriteInto(session, practice, zone.Name, now);
                foreach (var (name, isSteward) in members)
                {
                    var player = PlayerOf(name);
                    var member = session.Members.Add(player.FirstName, isSteward ? Role.Steward : Role.Member, now);
                    session.Members.AddAccount(player.Account, member.Id, now);
                }
            }
        });
        foreach (var player in players.Values)
        {
            stage.Players[player.Account] = player;
        }
    }

    private void Hear(HeardMessage message)
    {
        heard.Add(message);
        page.Heard(message, zone!);
    }

    private Player PlayerOf(string name)
    {
        if (!players.TryGetValue(name, out var player))
        {
            players[name] = player = new Player(name, FirstAccount + players.Count);
            if (stage is not null)
            {
                stage.Players[player.Account] = player;
            }
        }

        return player;
    }

    private void RefuseLate(TalkLine line)
    {
        if (isFounded)
        {
            throw new TalkException(line.Number, "stands at the top, before anything happens");
        }
    }

    private static DateTimeOffset InstantOf(StudioZone zone, DateTime local) =>
        zone.InstantOf(DateOnly.FromDateTime(local), TimeOnly.FromDateTime(local));

    // Lines wrap somewhere: any run of blanks is one.
    private static bool Holds(HeardMessage message, string words) =>
        Blanks().Replace(message.Text + " " + string.Join(' ', message.Buttons), " ")
            .Contains(Blanks().Replace(words, " "), StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"\s+", RegexOptions.NonBacktracking)]
    private static partial Regex Blanks();
}
