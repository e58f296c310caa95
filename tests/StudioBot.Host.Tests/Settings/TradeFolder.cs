using StudioBot.Host.Settings;

namespace StudioBot.Host.Tests.Settings;

/// <summary>A copy of the shipped settings that a test may spoil.</summary>
internal sealed class TradeFolder : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("trade").FullName;

    public TradeFolder()
    {
        foreach (var file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "config"), "*.json"))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }
    }

    /// <summary>Replaces the first place where the text stands; it must stand there.</summary>
    public TradeFolder With(string file, string text, string instead)
    {
        var path = Path.Combine(folder, file);
        var whole = File.ReadAllText(path);
        var at = whole.IndexOf(text, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file} does not hold {text}");
        File.WriteAllText(path, whole[..at] + instead + whole[(at + text.Length)..]);
        return this;
    }

    public TradeFolder Without(string file)
    {
        File.Delete(Path.Combine(folder, file));
        return this;
    }

    /// <summary>Everything wrong with the folder as it is now.</summary>
    public IReadOnlyList<TradeSettingError> Errors() =>
        Assert.IsType<TradeReading.Wrong>(TradeSettings.Load(folder)).Errors;

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
