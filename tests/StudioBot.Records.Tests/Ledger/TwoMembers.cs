using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Ledger;

/// <summary>A studio of two, Mira and Pia, with nothing in its books.</summary>
public abstract class TwoMembers : IDisposable
{
    protected TwoMembers() => (Mira, Pia) = Studio.File.Write(session => (
        session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning)));

    private protected TemporaryStudio Studio { get; } = new();

    protected Member Mira { get; }

    protected Member Pia { get; }

    public void Dispose()
    {
        Studio.Dispose();
        GC.SuppressFinalize(this);
    }
}
