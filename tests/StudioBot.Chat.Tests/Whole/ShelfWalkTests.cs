using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Everything the invented studio has on record can be asked after by its name, and every button leads on.</summary>
public sealed class ShelfWalkTests
{
    public static TheoryData<string> Names
    {
        get
        {
            var view = Sample.Studio.View;
            return
            [
                .. view.Materials.All().SelectMany(one => new[] { $"stock {one.Name}", $"material {one.Name}" }),
                .. view.Lots.All().Select(one => one.Label).OfType<string>().Select(label => $"lot {label}"),
                .. view.Batches.All().Select(one => $"batch {one.Number}"),
                .. view.Recipes.All().Select(one => $"recipe {one.Name}"),
                .. Sample.Studio.Practice.Techniques.Select(one => $"technique {one.Name}"),
                .. view.Members.All().Select(one => $"balance {one.Name}"),
            ];
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_on_record_is_answered_and_leads_on(string words)
    {
        Assert.False(Sample.Answer(words)!.IsTrouble, Phone.Says(words));
        Phone.Fits(words);
    }
}
