namespace StudioBot.Chat.Reading;

/// <summary>A slot that holds a value of one type.</summary>
/// <typeparam name="T">What it holds.</typeparam>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
public abstract class Slot<T>(string what, string example) : Slot(what, example)
    where T : notnull
{
    /// <inheritdoc/>
    internal sealed override IEnumerable<Meaning> Means(Phrase said) => said.Has(this) ? Means(said.Of(this)) : [];

    /// <inheritdoc/>
    internal override string? Say(Phrase said) => said.Has(this) ? Say(said.Of(this)) : null;

    /// <summary>What this value means, by key.</summary>
    internal abstract IEnumerable<Meaning> Means(T value);

    /// <summary>This value in words that the slot reads back.</summary>
    internal abstract string Say(T value);
}
