using System.Text;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Members;

public sealed class InvitationsTests : IDisposable
{
    private const string Code = "k3q7-2m9x-8w4t-5r6p";

    private readonly TemporaryStudio studio = new();
    private readonly Member mira;

    public InvitationsTests() =>
        mira = studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_code_is_good_once_for_what_it_was_made_for()
    {
        Invite(new Invited(Role.Member, null));

        Assert.Equal(new Invited(Role.Member, null), Use(Code, 1));
        Assert.Null(Use(Code, 1));
    }

    [Fact]
    public void A_code_may_bring_a_member_back_with_a_new_account()
    {
        Invite(new Invited(Role.Steward, mira.Id));

        Assert.Equal(new Invited(Role.Steward, mira.Id), Use(Code, 1));
    }

    [Fact]
    public void Another_code_and_one_that_comes_too_late_are_good_for_nothing()
    {
        Invite(new Invited(Role.Member, null));

        Assert.Null(Use("k3q7-2m9x-8w4t-5r6q", 1));
        Assert.Null(Use(Code, 24));   // it was good for a day
        Assert.NotNull(Use(Code, 23.9));
    }

    [Fact]
    public void The_code_of_who_keeps_house_no_more_is_void()
    {
        Invite(new Invited(Role.Steward, null));

        studio.File.Write(session => session.Members.Change(mira with { Role = Role.Member }, session.Said("members")));

        Assert.Null(Use(Code, 1));
    }

    [Fact]
    public void The_code_of_who_left_is_void()
    {
        Invite(new Invited(Role.Steward, null));

        studio.File.Write(session => session.Members.Leave(mira.Id, session.Said("leave", mira)));

        Assert.Null(Use(Code, 1));
    }

    [Fact]
    public void Undo_voids_the_code()
    {
        var act = Invite(new Invited(Role.Member, null));

        studio.File.Write(session => session.TakeBack(act, mira));   // an hour later

        Assert.Null(Use(Code, 1));
    }

    [Fact]
    public void The_file_does_not_hold_the_code()
    {
        Invite(new Invited(Role.Member, null));
        studio.File.Write(session => session.Claim.Put(Code, Morning));
        studio.File.Dispose();

        var file = File.ReadAllText(studio.Path, Encoding.Latin1);
        Assert.Contains("invitation", file, StringComparison.Ordinal);
        Assert.DoesNotContain(Code, file, StringComparison.Ordinal);
    }

    [Fact]
    public void Old_codes_are_forgotten()
    {
        Invite(new Invited(Role.Member, null));

        Assert.Equal(0, studio.File.Write(session => session.Invitations.Prune(Morning.AddDays(1))));
        Assert.Equal(1, studio.File.Write(session => session.Invitations.Prune(Morning.AddDays(2))));
    }

    private Act Invite(Invited what) => studio.File.Write(session =>
    {
        var act = session.Said("members", mira);
        session.Invitations.Put(Code, what, Morning.AddDays(1), act);
        return act;
    });

    private Invited? Use(string code, double hours) =>
        studio.File.Write(session => session.Invitations.Use(code, Morning.AddHours(hours)));
}
