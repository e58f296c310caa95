namespace StudioBot.Host.Tests.Support;

/// <summary>What somebody might write to have it read as something else: markup, formulas, orders to a terminal, lines of a log.</summary>
internal static class HostileText
{
    public static IReadOnlyList<string> All { get; } =
    [
        .. Markup, .. Formulas, .. Signs, .. Directions, .. Heaps, .. Orders, .. Lines, .. Code, .. Chat, .. Long,
    ];

    private static string[] Markup =>
    [
        "<b>", "</b>", "<b>bold</b>", "<b><i>", "</pre>", "</code>", "<pre>", "<a href=\"http://x.test\">x</a>",
        "<a href='javascript:alert(1)'>", "<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "<tg-spoiler>",
        "<tg-emoji emoji-id=\"1\">", "<blockquote expandable>", "<br>", "<p>", "<!-- x -->", "<![CDATA[x]]>", "&", "&amp;", "&lt;b&gt;",
        "&#60;b&#62;", "&#x3c;b&#x3e;", "&nbsp;", "&notatag;", "1 < 2 > 0", "<", ">", "<>", "\"><b>", "*bold*", "_it_", "[x](http://x.test)",
        "`code`", "```", "||hidden||", "~gone~", "\\*", "‹b›", "＜b＞", "<b\u0000>", "<\u200bb>",
    ];

    private static string[] Formulas =>
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1)", "=HYPERLINK(\"http://x.test\")", "=cmd|' /C calc'!A0", "=IMPORTXML(\"http://x.test\")",
        "\t=1+1", " =1+1", "\u00a0=1+1", "\u200b=1+1", "\ufeff=1+1", "\u3000=1+1", "＝1+1", "＋1", "－1", "＠x", "﹦1", "﹢1", "﹣1", "﹫x", "−1",
        "'=1+1", "''=1", "\"=1+1\"", "x\n=1+1", "x\r=1+1", "x\r\n@x", "=\n1", "a,=1", "a;=1", "\"\"", "\"", "a\"b", "x,y", "x;y", "%0A=1",
    ];

    private static string[] Signs =>
    [
        "\0", "a\0b", "\u0001", "\u0007", "\b\b\b", "\u000b", "\u000c", "\u001a", "\u001b[31mred", "\u001b]0;title\u0007", "\u001b[2J\u001b[H",
        "\u001bP$q\u001b\\", "\u009b31m", "\u0085", "\u007f", "\u009d0;x\u009c", "\ud800", "\udc00", "a\ud83d", "\ude00b", "\ufffe", "\uffff", "\ufffd",
    ];

    private static string[] Directions =>
    [
        "\u202egnp.exe", "\u202dabc\u202c", "\u2066x\u2069", "\u2067x\u2069", "\u2068x\u2069", "\u200e", "\u200f", "\u061cx", "שלום", "مرحبا 123",
        "abc\u202e321\u202c", "\u200bwhite", "wh\u200bite", "wh\u2060ite", "wh\u00adite", "\ufeffwhite", "a\u200cb", "a\u200db",
    ];

    private static string[] Heaps =>
    [
        "Z" + string.Concat(Enumerable.Repeat("\u0334\u0361\u0489", 30)), "e\u0301", "é", "ﬁ", "ǅ", "İstanbul", "ß", "ΑΒΓ", "Ａ", "Ⅷ", "½", "①",
        "👩‍👩‍👧‍👦", "👍🏽", "🏳️‍🌈", "🇦🇹", "❤️", "1️⃣", "😀😀😀", "𝓑𝓸𝓵𝓭", "𠜎", "a\u0308\u0308\u0308", "\u0300x", "ก็็็็็็็็็", "﷽", "𒐫", "ꙮ",
    ];

    private static string[] Orders =>
    [
        "'; drop table member; --", "' or '1'='1", "\" or 1=1 --", "1; delete from post", "x' union select code_hash from claim_code --",
        "$name", "@p0", ":id", "?1", "%", "_", "%%", "a%b_c", "\\", "\\'", "''", "/*", "*/", "--", "$(reboot)", "`reboot`", "; reboot", "| cat",
        "&& reboot", "$HOME", "%PATH%", "!!", "#!", "../../etc/passwd", "..\\..\\x", "/etc/passwd", "C:\\x", "\\\\x\\y", "file:///etc/passwd", "~/.x",
        "CON", "NUL", "aux.csv", "a/b", "a:b", "nul.txt.", ".", "..", "…",
    ];

    private static string[] Lines =>
    [
        "x\n2026-11-25T09:00:00.000Z Critical studio: forged", "x\r2026-11-25T09:00:00.000Z Error studio: forged",
        "x\r\nforged", "x\u20282026-11-25T09:00:00.000Z Error studio: forged", "x\u2029forged", "x\u0085forged", "x\n\n\n\ny", "\n", "x\\ny",
        "a\nused 500 ml white", "a; used 500 ml white", "x and used 500 ml white",
    ];

    private static string[] Code =>
    [
        "{0}", "{1}", "{", "}", "{{", "}}", "{{0}}", "{0:X}", "{name}", "%s", "%n%n", "%x", "${x}", "#{x}", "{{7*7}}", "<%= 7*7 %>", "$x", "@x",
        "{\"a\":1}", "[1,2]", "null", "true", "\"}", "\\u003cb\\u003e", "\\0", "NaN", "Infinity", "-0", "1e309", "0x1F", "１２", "99999999999999999999",
    ];

    private static string[] Chat =>
    [
        "@studio_bot", "@everyone", "@mira", "/stock", "/undo", "/stop lot W-1", "/join ABC123", "t.me/x", "http://x.test/?a=b&c=<d>", "https://x.test",
        "tg://user?id=7", "mailto:x@x.test", "#tag", "$CASH", "+43 1 234", "undo", "help", "white", "Mira", "me", "kitty", "studio", "page 2", "act 1",
        "for Pia", "yesterday", "17", "~AAAAAAAAAAAAAAAA", "123456789:TestOnlyTestOnlyTestOnlyTestOnly123",
    ];

    private static string[] Long =>
    [
        new('w', 4096), new('<', 1500), new('&', 1500), string.Concat(Enumerable.Repeat("😀", 900)), string.Concat(Enumerable.Repeat("w ", 900)),
        new('w', 81), new('w', 41), new('w', 40), new('"', 300),
    ];
}
