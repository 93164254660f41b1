using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

public sealed class ChainStepsTests
{
    private static readonly Instant Start = Instant.FromUtc(2027, 3, 1, 0, 0);

    /// <summary>Step i starts at the given hours and waits for the one after it in the list.</summary>
    private static ChainLink[] Chain(params int[] hours) => [.. hours.Select((hour, i) => new ChainLink(
        Key(i),
        $"step {i}",
        Start + Duration.FromHours(hour),
        Start + Duration.FromHours(hour + 1),
        new PlannedCause(CauseKind.Predecessor, "", i + 1 < hours.Length ? Key(i + 1) : null, null, [])))];

    private static StageKey Key(int i) => StageKey.OfTask(new Id($"t{i}"), new Id("1"));

    [Fact]
    public void Of_ShortChain_IsWhole()
    {
        var steps = ChainSteps.Of(Chain(5, 4, 3, 2, 1), 5);

        Assert.Equal(["step 0", "step 1", "step 2", "step 3", "step 4"], steps.Select(s => s.Link.Name));
        Assert.All(steps, step => Assert.Equal(0, step.LeftOut));
    }

    [Fact]
    public void Of_LongChain_IsItsFirstStepsItsTurningPointsAndItsBeginning()
    {
        var steps = ChainSteps.Of(Chain(100, 99, 98, 97, 50, 49, 48, 10, 9, 8), 6);

        Assert.Equal(["step 0", "step 1", "step 2", "step 3", "step 6", "step 9"], steps.Select(s => s.Link.Name));
        Assert.Equal([0, 0, 0, 0, 2, 2], steps.Select(s => s.LeftOut));
    }

    [Fact]
    public void Of_LongChain_CountsEveryStep()
    {
        var chain = Chain([.. Enumerable.Range(0, 40).Select(i => 400 - (i * i / 4))]);

        Assert.Equal(chain.Length, ChainSteps.Of(chain, 5).Sum(s => s.LeftOut + 1));
    }

    [Fact]
    public void Of_StagesOfOneTask_AreOneStep()
    {
        var (task, first, second) = (new Id("t"), new Id("1"), new Id("2"));
        ChainLink[] chain =
        [
            new(StageKey.OfTask(task, second), "cure", Start, Start, new PlannedCause(CauseKind.Predecessor, "", StageKey.OfTask(task, first), null, [])),
            new(StageKey.OfTask(task, first), "glue", Start, Start, new PlannedCause(CauseKind.ClosedHours, "", null, null, [])),
        ];

        Assert.Equal("glue", Assert.Single(ChainSteps.Of(chain)).Link.Name);
    }
}
