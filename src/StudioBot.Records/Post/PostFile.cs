namespace StudioBot.Records.Post;

/// <summary>A file that goes out with a post.</summary>
/// <param name="Name">As it is to be called, 1 to 100 characters.</param>
/// <param name="MediaType">What it is: text/csv.</param>
/// <param name="Content">Its bytes; at least one.</param>
public sealed record PostFile(string Name, string MediaType, byte[] Content);
