using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Acts;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class LotLabelsTests
{
    [Fact]
    public void Labels_that_differ_by_their_hyphens_alone_are_typed_as_they_stand()
    {
        using var studio = LiveStudio.Empty();
        studio.File.Write(session =>
        {
            var act = session.Acts.Begin(new NewAct("import", session.Members.All()[0], "import", studio.Now));
            var white = session.Materials.All().First(material => material.Name == "white");
            foreach (var label in new[] { "A1-11", "A11-1" })
            {
                session.Stock.Enter(new NewLot(white, StockedStudio.Ml(1000), studio.Now) { Label = label }, StockReason.Opening, act);
            }
        });

        Assert.StartsWith("A11-1,", studio.Hear("lot a11-1"));
        Assert.StartsWith("A1-11,", studio.Hear("lot A1-11"));
        Assert.DoesNotContain("1000 ml", studio.Hear("lot A111"));
    }
}
