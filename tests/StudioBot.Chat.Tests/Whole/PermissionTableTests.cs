using StudioBot.Chat.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Who may say what where, command by command: nobody is let in by being forgotten.</summary>
public sealed class PermissionTableTests : IDisposable
{
    private const long Group = -100;
    private const long OtherGroup = -200;
    private const string Code = "ABC123";
    private const string Invitation = "Ask a steward of this studio for an invitation.";

    // Where each may: p in private, g in the studio's group, o in another group, - nowhere.
    private const string Table = """
        room       word       form              stranger
                                               |    who left
                                               |    |    as the group
                                               |    |    |    as a channel
                                               |    |    |    |    member
                                               |    |    |    |    |    steward
        asking     again      AgainCommand      -    -    -    -    pg   pg
        asking     air        AirCommand        -    -    -    -    pg   pg
        asking     amounts    AmountsCommand    -    -    -    -    pg   pg
        asking     compare    CompareCommand    -    -    -    -    pg   pg
        asking     convert    ConvertCommand    -    -    -    -    pg   pg
        asking     flow       FlowCommand       -    -    -    -    pg   pg
        asking     help       HelpCommand       -    -    -    -    pg   pg
        asking     quote      QuoteCommand      -    -    -    -    pg   pg
        asking     ratio      RatioCommand      -    -    -    -    pg   pg
        asking     resin      ResinCommand      -    -    -    -    pg   pg
        asking     scale      ScaleCommand      -    -    -    -    pg   pg
        asking     spin       SpinCommand       -    -    -    -    pg   pg
        asking     why        WhyCommand        -    -    -    -    pg   pg
        asking     workshop   WorkshopCommand   -    -    -    -    pg   pg
        recording  batch      BatchAmend        -    -    -    -    pg   pg
        recording  batch      BatchBin          -    -    -    -    pg   pg
        recording  batch      BatchRead         -    -    -    -    pg   pg
        recording  batch      BatchResinGelled  -    -    -    -    pg   pg
        recording  batch      BatchShow         -    -    -    -    pg   pg
        recording  bin        BinCommand        -    -    -    -    pg   pg
        recording  coat       CoatCommand       -    -    -    -    pg   pg
        recording  coat       CoatFailed        -    -    -    -    pg   pg
        recording  dry        DryCommand        -    -    -    -    pg   pg
        recording  due        DueCommand        -    -    -    -    pg   pg
        recording  gelled     GelledCommand     -    -    -    -    pg   pg
        recording  kept       KeptCommand       -    -    -    -    pg   pg
        recording  label      LabelCommand      -    -    -    -    pg   pg
        recording  left       LeftCommand       -    -    -    -    pg   pg
        recording  mix        MixCommand        -    -    -    -    pg   pg
        recording  note       NoteCommand       -    -    -    -    pg   pg
        recording  notyet     NotYetCommand     -    -    -    -    pg   pg
        recording  number     NumberCommand     -    -    -    -    pg   pg
        recording  piece      PieceCommand      -    -    -    -    pg   pg
        recording  pieces     PiecesCommand     -    -    -    -    pg   pg
        recording  pour       PourCommand       -    -    -    -    pg   pg
        recording  pour       PourMeasured      -    -    -    -    pg   pg
        recording  room       RoomCommand       -    -    -    -    pg   pg
        recording  sand       SandCommand       -    -    -    -    pg   pg
        recording  shelf      ShelfRoom         -    -    -    -    pg   pg
        recording  shelf      ShelfSet          -    -    -    -    pg   pg
        recording  shelf      ShelfShow         -    -    -    -    pg   pg
        recording  sold       SoldCommand       -    -    -    -    pg   pg
        recording  tacky      TackyCommand      -    -    -    -    pg   pg
        recording  weigh      WeighCommand      -    -    -    -    pg   pg
        sharing    balance    BalanceCommand    -    -    -    -    pg   pg
        sharing    bought     BoughtCommand     -    -    -    -    pg   pg
        sharing    buy        BuyCommand        -    -    -    -    pg   pg
        sharing    calendar   CalendarCommand   -    -    -    -    pg   pg
        sharing    count      CountCommand      -    -    -    -    pg   pg
        sharing    export     ExportCommand     -    -    -    -    pg   pg
        sharing    kitty      KittyCommand      -    -    -    -    pg   pg
        sharing    lot        LotCommand        -    -    -    -    pg   pg
        sharing    opened     OpenedCommand     -    -    -    -    pg   pg
        sharing    ordered    OrderedCommand    -    -    -    -    pg   pg
        sharing    paid       PaidCommand       -    -    -    -    pg   pg
        sharing    received   ReceivedCommand   -    -    -    -    p    p
        sharing    reserve    ReserveCommand    -    -    -    -    pg   pg
        sharing    settle     SettleCommand     -    -    -    -    -    p
        sharing    stock      StockCommand      -    -    -    -    pg   pg
        sharing    stop       StopCommand       -    -    -    -    pg   pg
        sharing    undo       UndoCommand       -    -    -    -    pg   pg
        sharing    undo       UndoList          -    -    -    -    pg   pg
        sharing    used       UsedCommand       -    -    -    -    pg   pg
        sharing    wall       WallCommand       -    -    -    -    pg   pg
        sharing    week       WeekCommand       -    -    -    -    pg   pg
        sharing    workshops  WorkshopsCommand  -    -    -    -    pg   pg
        house      join       JoinCommand       p    p    -    -    pg   pg
        house      leave      LeaveCommand      -    -    -    -    pg   pg
        house      material   MaterialNew       -    -    -    -    -    pg
        house      material   MaterialSet       -    -    -    -    -    pg
        house      material   MaterialShow      -    -    -    -    pg   pg
        house      me         MeSet             -    -    -    -    pg   pg
        house      me         MeShow            -    -    -    -    pg   pg
        house      members    MembersAccount    -    -    -    -    -    p
        house      members    MembersForget     -    -    -    -    -    pg
        house      members    MembersInvite     -    -    -    -    -    p
        house      members    MembersRefused    -    -    -    -    -    p
        house      members    MembersRole       -    -    -    -    -    pg
        house      members    MembersShow       -    -    -    -    pg   pg
        house      recipe     RecipeSet         -    -    -    -    pg   pg
        house      recipe     RecipeShow        -    -    -    -    pg   pg
        house      remind     RemindCommand     -    -    -    -    pg   pg
        house      setup      SetupCommand      -    -    -    -    -    pg
        house      studio     StudioAccuracy    -    -    -    -    pg   pg
        house      studio     OwnDrying         -    -    -    -    pg   pg
        house      studio     StudioBoard       -    -    -    -    -    pg
        house      studio     StudioHere        -    -    -    -    -    pgo
        house      studio     StudioBackup      -    -    -    -    -    p
        house      studio     StudioOne         -    -    -    -    pg   pg
        house      studio     StudioSet         -    -    -    -    -    pg
        house      studio     StudioShow        -    -    -    -    pg   pg
        house      technique  TechniqueSet      -    -    -    -    -    pg
        house      technique  TechniqueShow     -    -    -    -    pg   pg
        """;

    private static readonly Standing[] Columns =
        [Standing.Stranger, Standing.Left, Standing.Anonymous, Standing.Channel, Standing.Member, Standing.Steward];

    private static readonly Conversation Conversation = new(Catalogue.Find());

    private readonly LiveStudio studio = LiveStudio.Sample();
    private readonly Dictionary<Standing, long> accounts = new()
    {
        [Standing.Stranger] = 901,
        [Standing.Left] = 902,
        [Standing.Anonymous] = 903,
        [Standing.Channel] = 904,
        [Standing.Member] = 905,
        [Standing.Steward] = 906,
    };

    public PermissionTableTests() => studio.File.Write(session =>
    {
        var gone = session.Members.Add("Gone", Role.Steward, studio.Now);
        session.Members.AddAccount(accounts[Standing.Left], gone.Id, studio.Now);
        session.Members.Leave(gone.Id, session.Acts.Begin(new NewAct("leave", gone, "leave", studio.Now)));
        session.Members.AddAccount(
            accounts[Standing.Member], session.Members.All().First(one => one.Role == Role.Member).Id, studio.Now);
        session.Members.AddAccount(
            accounts[Standing.Steward], session.Members.All().First(one => one.Role == Role.Steward).Id, studio.Now);
        session.Studio.Set("group", "-100");
        session.Claim.Put(Code, studio.Now.AddMinutes(15));
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_table_names_every_form_of_every_command_and_no_other() => Assert.Equal(
        Catalogue.Find().Forms.Select(NameOf).Order(StringComparer.Ordinal),
        Rows().Select(row => row.Form).Order(StringComparer.Ordinal));

    [Fact]
    public void Each_may_say_where_the_table_says_so_and_nowhere_else()
    {
        var forms = Catalogue.Find().Forms.ToDictionary(NameOf);
        var wrong = new List<string>();
        var cells = 0;
        foreach (var (name, expected) in Rows())
        {
            foreach (var (who, where) in from one in Columns from place in Enum.GetValues<Place>() select (one, place))
            {
                cells++;
                var may = expected[Array.IndexOf(Columns, who)].Contains(LetterOf(where), StringComparison.Ordinal);
                if (Trouble(forms[name], who, where, may) is { } trouble)
                {
                    wrong.Add($"{name} by {who} in {where}: {trouble}");
                }
            }
        }

        Assert.Empty(wrong);
        Assert.Equal(Catalogue.Find().Forms.Count * 6 * 3, cells);
    }

    // What is wrong with what comes of its first example; nothing where it is as it should be.
    private string? Trouble(Command form, Standing who, Place where, bool may)
    {
        var outcome = Say(form.Sheet.Examples[0].Replace("ABC123", Code, StringComparison.Ordinal), who, where);
        if (outcome is null)
        {
            return "met with silence, though it is meant for us";
        }

        if (may)
        {
            return outcome.Barred is null ? null : $"refused: {outcome.Barred.Why}";
        }

        var words = outcome.IsSilent ? "" : outcome.Reply.PlainText.Trim();
        return outcome.Barred is null ? "not refused: " + words
            : outcome.Barred.Standing != who ? $"kept as {outcome.Barred.Standing}"
            : outcome.Recorded || outcome.Asides.Count > 0 || outcome.Reply.Buttons.Count > 0 ? "something came of it"
            : who is Standing.Stranger or Standing.Left && words != (where == Place.Private ? Invitation : "")
                ? "said to a stranger: " + words
            : null;
    }

    // Whatever comes of it is taken back, so that each cell is said in the same studio.
    private Outcome? Say(string words, Standing who, Place where) => studio.File.Write(session =>
        session.Attempt(() => Conversation.Take(TurnOf(words, who, where, session), Open(session), session), _ => false));

    private static Studio Open(StudioSession session) => new(session, Sample.Studio.Practice, isSample: false);

    private Turn TurnOf(string words, Standing who, Place where, StudioSession session)
    {
        var member = session.Members.ByAccount(accounts[who]);
        return new Turn(
            where == Place.Private ? words : "/" + words,
            where == Place.Private ? ChatKind.Private : ChatKind.Group,
            new Speaker(member?.Name ?? "Somebody", member?.Role == Role.Steward),
            studio.Now.UtcDateTime)
        {
            Now = studio.Now,
            Member = member,
            Mask = who is Standing.Anonymous or Standing.Channel ? who : null,
            UserId = accounts[who],
            ChatId = where switch { Place.Private => accounts[who], Place.StudioGroup => Group, _ => OtherGroup },
            NewCode = length => new string('A', length),
        };
    }

    private static string LetterOf(Place where) => where switch
    {
        Place.Private => "p",
        Place.StudioGroup => "g",
        _ => "o",
    };

    private static string NameOf(Command form) => form.GetType().Name;

    private static IEnumerable<(string Form, string[] May)> Rows() => Table.Split('\n')
        .Where(line => !line.Contains('|', StringComparison.Ordinal) && !line.StartsWith("room", StringComparison.Ordinal))
        .Select(line => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        .Select(cells => (cells[2], cells[3..]));
}
