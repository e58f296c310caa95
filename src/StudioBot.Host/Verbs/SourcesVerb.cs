using System.Text.Json;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot sources</c>: where each value that the trade assumes comes from, as the page
/// <c>config/sources.md</c>.</summary>
internal sealed class SourcesVerb : Verb
{
    private const string Provenance = "provenance";
    private const string Name = "name";

    // They name a thing and are no value of it.
    private static readonly string[] Names = [Provenance, Name, "otherNames", "words", "value"];

    /// <inheritdoc/>
    public override string Word => "sources";

    /// <inheritdoc/>
    public override string Usage => "sources";

    /// <inheritdoc/>
    public override string Says => "Where each value of the trade comes from.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.WithPractice(place, _ =>
        {
            foreach (var line in Page(Opening.ConfigFolder(place)))
            {
                place.Streams.Out.WriteLine(line);
            }

            return Task.FromResult(ExitCode.Done);
        });

    /// <summary>The page, line by line.</summary>
    /// <param name="folder">Where the trade's values stand; they are known to be right.</param>
    internal static IEnumerable<string> Page(string folder)
    {
        yield return "# Where the values come from";
        yield return "";
        yield return "Made by `studiobot sources` from the files beside this page. “verified” names who published it; "
            + "“common practice” and “memory” are starting guesses. The product's sheet beats them all.";
        foreach (var file in Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal))
        {
            if (Path.GetFileName(file) == Path.GetFileName(SettingSources.FileName))
            {
                continue;
            }

            yield return "";
            yield return $"## {Path.GetFileName(file)}";
            yield return "";
            yield return "| value | is | comes from |";
            yield return "|---|---|---|";
            using var whole = JsonDocument.Parse(File.ReadAllText(file));
            foreach (var row in Rows("", whole.RootElement))
            {
                yield return row;
            }
        }
    }

    private static IEnumerable<string> Rows(string path, JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => Object(path, element),
        JsonValueKind.Array => element.EnumerateArray()
            .SelectMany((one, at) => Rows(Below(path, Called(one, at)), one)),
        _ => [],
    };

    private static IEnumerable<string> Object(string path, JsonElement element)
    {
        var members = element.EnumerateObject().ToList();
        var own = element.TryGetProperty(Provenance, out var source)
            ? [$"| {path} | {Cell(Value(element))} | {Cell(source.GetString()!)} |"]
            : Enumerable.Empty<string>();
        return own.Concat(members.SelectMany(member => Rows(Below(path, member.Name), member.Value)));
    }

    // What an object says itself; what bears its own source has its own row.
    private static string Value(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object when element.TryGetProperty("value", out var value) => Value(value),
        JsonValueKind.Object => string.Join("; ", element.EnumerateObject()
            .Where(member => !Names.Contains(member.Name) && !HasSource(member.Value))
            .Select(member => $"{member.Name} {Inner(member.Value)}")),
        JsonValueKind.Array => string.Join(", ", element.EnumerateArray().Where(one => !HasSource(one)).Select(Inner)),
        _ => element.ToString(),
    };

    private static string Inner(JsonElement element) =>
        element.ValueKind == JsonValueKind.Object ? $"({Value(element)})" : Value(element);

    private static bool HasSource(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.TryGetProperty(Provenance, out _)
            || element.EnumerateObject().Any(member => HasSource(member.Value)),
        JsonValueKind.Array => element.EnumerateArray().Any(HasSource),
        _ => false,
    };

    private static string Called(JsonElement one, int at) =>
        one.ValueKind != JsonValueKind.Object ? $"{at + 1}"
        : one.TryGetProperty(Name, out var name) ? name.GetString()!
        : one.TryGetProperty("subject", out var subject) ? subject.GetString()!
        : $"{at + 1}";

    private static string Below(string path, string name) => path.Length == 0 ? name : $"{path} › {name}";

    private static string Cell(string words) => words.Replace("|", "\\|", StringComparison.Ordinal);
}
