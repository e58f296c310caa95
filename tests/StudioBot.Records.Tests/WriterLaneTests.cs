namespace StudioBot.Records.Tests;

public sealed class WriterLaneTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly WriterLane lane = new();

    [Fact]
    public async Task It_is_had_in_the_order_of_coming()
    {
        List<int> had = [];
        Assert.True(lane.Enter(Patience));
        List<Task> others = [];
        for (var one = 0; one < 8; one++)
        {
            var number = one;
            others.Add(Task.Factory.StartNew(
                () =>
                {
                    Assert.True(lane.Enter(Patience));
                    had.Add(number);
                    lane.Leave();
                },
                TaskCreationOptions.LongRunning));
            while (lane.Waiting <= one)
            {
                await Task.Yield();
            }
        }

        lane.Leave();
        await Task.WhenAll(others).WaitAsync(Patience);
        Assert.Equal(Enumerable.Range(0, 8), had);
    }

    [Fact]
    public async Task Who_waits_too_long_goes_and_the_next_one_has_it()
    {
        Assert.True(lane.Enter(Patience));
        Assert.False(await Task.Run(() => lane.Enter(TimeSpan.Zero)));
        lane.Leave();
        Assert.True(await Task.Run(() =>
        {
            var has = lane.Enter(Patience);
            lane.Leave();
            return has;
        }));
    }

    [Fact]
    public void Only_who_has_it_holds_it()
    {
        bool? heldByOther = null;
        Assert.False(lane.IsHeldByCurrentThread);
        Assert.True(lane.Enter(Patience));
        Assert.True(lane.IsHeldByCurrentThread);
        var others = new Thread(() => heldByOther = lane.IsHeldByCurrentThread);
        others.Start();
        others.Join();
        lane.Leave();
        Assert.Equal((false, false), (heldByOther, lane.IsHeldByCurrentThread));
    }
}
