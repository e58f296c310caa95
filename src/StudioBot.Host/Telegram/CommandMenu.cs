using Telegram.Bot.Requests;
using Telegram.Bot.Types;

namespace StudioBot.Host.Telegram;

/// <summary>The list of commands that the service shows while one types.</summary>
internal static class CommandMenu
{
    /// <summary>The requests that set it, one a scope; none for an empty list, which would take the menu
    /// away.</summary>
    /// <param name="inPrivate">Words and what they do, where one person writes.</param>
    /// <param name="inGroups">The same for groups.</param>
    public static IEnumerable<SetMyCommandsRequest> Requests(
        IReadOnlyList<(string Word, string Says)> inPrivate, IReadOnlyList<(string Word, string Says)> inGroups) =>
        new[]
        {
            Request(inPrivate, new BotCommandScopeAllPrivateChats()),
            Request(inGroups, new BotCommandScopeAllGroupChats()),
        }.Where(request => request.Commands.Any());

    private static SetMyCommandsRequest Request(
        IReadOnlyList<(string Word, string Says)> menu, BotCommandScope scope) => new()
        {
            Commands = menu.Select(entry => new BotCommand(entry.Word, entry.Says)).ToList(),
            Scope = scope,
        };
}
