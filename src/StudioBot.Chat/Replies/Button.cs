namespace StudioBot.Chat.Replies;

/// <summary>A button is a message one could have typed.</summary>
/// <param name="Label">What stands on it, at most about 20 characters.</param>
/// <param name="Line">The message it stands for, which the reader accepts.</param>
public sealed record Button(string Label, string Line);
