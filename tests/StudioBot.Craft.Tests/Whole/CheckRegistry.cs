using System.Reflection;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>
/// The functions behind the <c>computation</c> column: gathered from every static class of the namespace
/// <c>Whole.Checks</c> with a static field or property <c>All</c>.
/// </summary>
internal static class CheckRegistry
{
    private const string Home = "StudioBot.Craft.Tests.Whole.Checks";
    private const BindingFlags Shared = BindingFlags.Static | BindingFlags.Public;

    /// <summary>By name; a name that stands twice is an exception.</summary>
    public static IReadOnlyDictionary<string, Func<Inputs, string>> Functions { get; } =
        typeof(CheckRegistry).Assembly.GetTypes()
            .Where(type => type.Namespace == Home && type is { IsAbstract: true, IsSealed: true })
            .Select(type => type.GetField("All", Shared)?.GetValue(null)
                ?? type.GetProperty("All", Shared)?.GetValue(null))
            .OfType<IReadOnlyDictionary<string, Func<Inputs, string>>>()
            .SelectMany(all => all)
            .ToDictionary(entry => entry.Key, entry => entry.Value);
}
