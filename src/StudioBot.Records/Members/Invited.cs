namespace StudioBot.Records.Members;

/// <summary>What an invitation is good for.</summary>
/// <param name="Role">What who comes may do.</param>
/// <param name="MemberId">Who comes with a new account; none: somebody new.</param>
public sealed record Invited(Role Role, long? MemberId);
