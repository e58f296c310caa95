using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class SandCommandTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_sanded_piece_is_ready_again_and_half_cured_resin_is_spoken_of()
    {
        _studio.Say("coat 14 180 ml 2:1");
        _studio.Now = _studio.Now.AddDays(2);

        var reply = _studio.Hear("sand 14");
        Assert.StartsWith("14 sanded: ready for the next coat.", reply, StringComparison.Ordinal);
        Assert.Contains("By the sheet 14 had not cured yet.", reply, StringComparison.Ordinal);
        Assert.Equal(Stage.Ready, _studio.Look(view => view.Pieces.Find(14)!.Stage));
    }

    [Fact]
    public void Without_a_coat_there_is_nothing_to_sand() =>
        Assert.StartsWith(
            "17 is still drying: there is no coat on it to sand. Nothing recorded.",
            _studio.Hear("sand 17"),
            StringComparison.Ordinal);
}
