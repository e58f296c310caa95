using StudioBot.Records.Members;

namespace StudioBot.Chat;

/// <summary>Something that was not done because of who said it, or where: it goes into the book of refusals.</summary>
/// <param name="Standing">What they are to the studio.</param>
/// <param name="Words">What they said; a stranger's without what might be a code.</param>
/// <param name="Why">Why not, in a few words.</param>
public sealed record Barred(Standing Standing, string Words, string Why);
