namespace StudioBot.Records.Materials;

/// <summary>Which measure belongs to which form of material.</summary>
internal static class Measure
{
    /// <summary>Lets these amounts of a material in this form pass; one that is absent passes.</summary>
    /// <exception cref="ArgumentException">One is not measured as the form is.</exception>
    public static void Check(MaterialForm form, params IEnumerable<Amount?> amounts)
    {
        if (amounts.FirstOrDefault(amount => amount is not null && !Fits(form, amount)) is { } wrong)
        {
            throw new ArgumentException($"{wrong} does not measure a material that is {form}.", nameof(amounts));
        }
    }

    private static bool Fits(MaterialForm form, Amount amount) => form switch
    {
        MaterialForm.Powder => amount is Amount.ByMass,
        MaterialForm.Counted => amount is Amount.ByCount,
        _ => amount is Amount.ByVolume,
    };
}
