namespace StudioBot.Chat.Asking;

/// <summary>A message as one has to type it in this chat.</summary>
internal static class Typed
{
    /// <summary>With a slash in a group, where nothing else is meant for the bot.</summary>
    public static string In(Turn turn, string message) => turn.Chat == ChatKind.Group ? "/" + message : message;
}
