namespace StudioBot.Host.Health;

/// <summary>How a studio is that could not be had when the service began: the log of that moment says why.</summary>
internal sealed class LostVitals : Wellbeing
{
    private const string Why = "could not be opened when the service began";

    /// <summary>Never: nothing of it runs.</summary>
    public override string? Hang => null;

    /// <summary>Always: nobody listens for it.</summary>
    public override string? Silence => Why;

    /// <summary>Always, until the service begins anew.</summary>
    public override string? Unready => Why;

    /// <summary>There is nothing to look at.</summary>
    public override void Look()
    {
    }
}
