using System.Collections.Concurrent;
using CsCheck;
using StudioBot.Craft.Reminders;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>Random histories of a studio; a failure prints the seed, and CsCheck_Seed takes it back.</summary>
public sealed class ReminderHistoriesTests
{
    [Fact]
    public void Whatever_happens_each_occurrence_is_said_at_most_once_and_none_in_vain()
    {
        var met = new ConcurrentDictionary<Type, bool>();
        var step = Gen.Select(Gen.Enum<Happening>(), Gen.Int[1, 3000], (what, minutes) => (what, minutes));
        step.Array[5, 60].Sample(
            steps =>
            {
                var history = new ReminderHistory();
                foreach (var (what, minutes) in steps)
                {
                    history.Take(what, TimeSpan.FromMinutes(minutes));
                }

                history.Settle();
                foreach (var verdict in history.Verdicts)
                {
                    met.TryAdd(verdict, true);
                }
            },
            iter: 10_000,
            print: steps => string.Join(", ", steps.Select(one => $"{one.what} {one.minutes}")));

        // Nothing is proved of what never came up.
        Assert.Equal(
            new[] { typeof(PingVerdict), typeof(WhatHolds) }
                .SelectMany(family => family.GetNestedTypes()).Select(type => type.Name).Order(),
            met.Keys.Select(type => type.Name).Order());
    }
}
