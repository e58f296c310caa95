using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class RecipeShowTests
{
    [Fact]
    public void A_recipe_shows_its_parts_and_its_volume()
    {
        var said = Phone.Says("recipe ocean");

        Assert.StartsWith("Ocean: 200 ml, 6 parts", said, StringComparison.Ordinal);       // 140 + 25 + 30 + 5; powders apart
        Assert.Matches("medium +140 ml", said);
        Assert.Matches("silver mica +2 g", said);
        Assert.Contains("Goes straight into a pour.", said, StringComparison.Ordinal);
        Assert.Contains("Dust mask", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mixture_that_goes_into_stock_says_what_it_makes() =>
        Assert.Contains("Makes medium, which goes into stock.", Phone.Says("recipe medium"), StringComparison.Ordinal);

    [Fact]
    public void Without_powder_there_is_no_caution() => Assert.DoesNotContain("mask", Phone.Says("recipe medium"), StringComparison.Ordinal);

    [Fact]
    public void Its_button_scales_it() => Assert.Equal("scale ocean to 400 ml", Sample.Answer("recipe ocean")!.Buttons[0].Line);

    [Fact]
    public void Without_a_name_all_are_listed()
    {
        var reply = Sample.Answer("recipes")!;

        Assert.StartsWith("4 recipes", reply.PlainText, StringComparison.Ordinal);
        Assert.Matches("medium +400 ml, 2 parts", reply.PlainText);
        Assert.Contains(reply.Buttons, button => button.Line == "recipe dusk");
    }

    [Fact]
    public void A_studio_without_recipes_says_so() =>
        Assert.StartsWith("No recipe is saved here yet", new StockedStudio().Says("recipe"), StringComparison.Ordinal);

    [Theory]
    [InlineData("recipe")]
    [InlineData("recipe ocean")]
    [InlineData("recipe activator")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);
}
