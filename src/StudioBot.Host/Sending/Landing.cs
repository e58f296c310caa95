using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>How a post that was on the wire ended.</summary>
internal sealed record Landing(Post Post, Delivery Delivery);
