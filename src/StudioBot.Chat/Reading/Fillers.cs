namespace StudioBot.Chat.Reading;

/// <summary>Words that carry no meaning of their own where nothing else claims them.</summary>
internal static class Fillers
{
    private static readonly char[] Separators = [' ', '\r', '\n'];

    private static readonly HashSet<string> Words =
    [
        .. """
            a an the this that these those some any of for to in into on onto at by with from and or as is are
            point last
            was were be been am it its i im ive me my mine we us our you your he she they them their do does did
            doing have has had having get got give gives gave can could will would shall should may might must
            need needs needed want wants wanted make makes making made take takes put puts let lets please pls
            plz thanks thank ta thx hi hey hello ok okay so well now then just only about around roughly approx
            approximately circa each per both all total overall there here what whats how much many when where
            which who whom whose why if but not no yes yep too also more most less least bit little lot lots set
            up out off over under again still yet already today tonight currently big small nice new old good
            bad size sized sizes wide long tall high across diameter dia length width height paint paints pour
            pours pouring poured mix mixed mixing coat coats batch piece pieces one ones ask charge cost costs
            price thing things stuff really very quite maybe like same using use used work works working go goes
            going went come comes amount amounts quantity enough sry sorry oops hw wot bot studio finished
            finish left time times low running paid
            """.Split(Separators, StringSplitOptions.RemoveEmptyEntries),
    ];

    private static readonly HashSet<string> Questions =
    [
        .. """
            what whats which who whose whom where wheres when why how is are was were do does did can could
            should would will shall may have has anyone any hw
            """.Split(Separators, StringSplitOptions.RemoveEmptyEntries),
    ];

    private static readonly HashSet<string> Vague =
    [
        .. """
            lots lot some bit little few plenty much many bunch loads tons handful splash dash pinch all most
            half
            """.Split(Separators, StringSplitOptions.RemoveEmptyEntries),
    ];

    /// <summary>Whether the word may be passed over.</summary>
    public static bool Holds(string word) => Words.Contains(word);

    /// <summary>Whether a message that begins with it asks.</summary>
    public static bool OpensQuestion(string word) => Questions.Contains(word);

    /// <summary>Whether it stands for an amount that nobody can book.</summary>
    public static bool IsVague(string word) => Vague.Contains(word);
}
