using StudioBot.Craft.Practice;

namespace StudioBot.Host.Settings;

/// <summary>How reading the trade's files ends: with all of it, or with everything that is wrong in them.</summary>
internal abstract record TradeReading
{
    private TradeReading()
    {
    }

    /// <summary>Every file was right.</summary>
    public sealed record Read(TradePractice Practice) : TradeReading;

    /// <summary>Something was wrong; nothing of the files may be used.</summary>
    /// <param name="Errors">All of them, file by file; at least one.</param>
    public sealed record Wrong(IReadOnlyList<TradeSettingError> Errors) : TradeReading;
}
