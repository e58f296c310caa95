using StudioBot.Chat;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Telegram;

public sealed class CommandMenuTests
{
    [Fact]
    public async Task The_menus_of_the_catalogue_are_taken_by_the_service()
    {
        await using var standIn = await StandIn.Start();
        var bot = Bots.At(standIn).Calling;
        var catalogue = Catalogue.Find();
        var menus = CommandMenu.Requests(catalogue.Menu(ChatKind.Private, true), catalogue.Menu(ChatKind.Group, true));
        foreach (var menu in menus)
        {
            Assert.True(await bot.SendRequest(menu));
        }

        Assert.Equal(["all_private_chats", "all_group_chats"], standIn.Calls.Select(call =>
            call.Body.GetProperty("scope").GetProperty("type").GetString()));
    }

    [Fact]
    public void An_empty_list_is_not_sent_since_it_would_take_the_menu_away() =>
        Assert.Single(CommandMenu.Requests([("help", "What one can say.")], []));
}
