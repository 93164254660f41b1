using EpisodePlanner.Planning.Tests.Demo;
using EpisodePlanner.Planning.Tests.Plans;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Advice;

/// <summary>A plan that was accepted stays as it is, as far as it can.</summary>
public sealed class MovedStartsTests
{
    private static readonly Instant Evening = Instant.FromUtc(2026, 11, 25, 18, 0);

    private static readonly PlanRequest Demo = Accepted(new PlanRequest(DemoSeed.Read("harbour-shed.json"), Evening));

    [Fact]
    public void Of_NothingAccepted_IsEmpty() =>
        Assert.Empty(MovedStarts.Of(Trial.Feasible(new PlanRequest(DemoSeed.Read("harbour-shed.json"), Evening))));

    [Fact]
    public void Of_AcceptedAndPlannedAgain_NothingMoves()
    {
        var plan = Trial.Feasible(Demo);

        Assert.Empty(MovedStarts.Of(plan));
        Assert.Equal(0, plan.Weights.Moves);
    }

    /// <summary>Property: changes that can't matter within a week move nothing within a week.</summary>
    [Fact]
    public void Of_SmallChangesElsewhere_NothingMoves()
    {
        var workshop = Demo.Workshop;
        var late = Trial.Feasible(Demo).Stages.Last(stage => stage is { Start: not null, Key.IsTail: false }).Key.Task;
        var task = workshop.Tasks.Find(late)!;
        Change[] small =
        [
            new TaskChange(late, task with { Name = "aaa " + task.Name }),
            new TaskChange(late, task with { Stages = task.Stages.Select(s => s with { Hours = s.Hours + 1 }).ToValueList() }),
            new TaskChange(new Id("sweep"), new WorkTask { Id = new Id("sweep"), Name = "sweep the loft", Stages = [new Stage { Id = new Id("1"), Hours = 2 }] }),
            new PersonChange(workshop.People.First().Id, workshop.People.First() with { Name = "Zed" }),
        ];

        Assert.All(small, change => Assert.Empty(MovedStarts.Of(After(Demo, change))));
    }

    /// <summary>Property: whatever moves wins something that weighs more, or could not stay.</summary>
    [Fact]
    public void Of_AnyTaskLonger_MovesOnlyWhatCannotStayOrWinsSomething()
    {
        foreach (var task in Demo.Workshop.Tasks.Where(task => task.Stages.Count > 0).Take(25))
        {
            var change = new TaskChange(task.Id, task with { Stages = task.Stages.Select(s => Longer(s)).ToValueList() });
            var plan = After(Demo, change);
            var kept = plan.Request.Workshop.Accepted!.Starts.Count;

            Assert.Equal(MovedStarts.Of(plan).Count(moved => moved.Accepted < Evening + Duration.FromDays(7)), plan.Weights.Moves);
            Assert.All(MovedStarts.Of(plan), moved => Assert.False(string.IsNullOrEmpty(moved.Because)));
            Assert.True(plan.Weights.Moves <= kept);
        }
    }

    [Fact]
    public void Of_WorkBeforeItTakesLonger_TellsWhatMovedAndWhy()
    {
        // Two tasks of 2 h on one evening of 4 h; the first takes 1 h more: the second begins an hour later.
        var shop = new Shop { Tasks = $"{Shop.Work("saw", 2)}, {Shop.Work("weld", 2, """, "links": [{ "task": "saw" }]""")}" };
        var before = Accepted(shop.Plan().Request);
        var saw = before.Workshop.Tasks.Find(new Id("saw"))!;

        var moved = Assert.Single(MovedStarts.Of(After(before, new TaskChange(saw.Id, saw with { Stages = [saw.Stages[0] with { Hours = 3 }] }))));

        Assert.Equal((new Id("weld"), 60L), (moved.Stage.Key.Task, moved.Minutes));
        Assert.Contains("“saw” is finished Mon 8 Mar 21:00", moved.Because, StringComparison.Ordinal);
    }

    private static Stage Longer(Stage stage) => stage with { Hours = stage.Hours + 2, HighHours = stage.HighHours + 2 };

    private static PlanRequest Accepted(PlanRequest request) => request with
    {
        Workshop = Assert.IsType<Applied>(
            Changes.Apply(request.Workshop, new AcceptedPlanChange(Acceptance.Of(Trial.Feasible(request))))).Workshop,
    };

    private static Plan After(PlanRequest request, Change change) => Trial.Feasible(
        request with { Workshop = Assert.IsType<Applied>(Changes.Apply(request.Workshop, change)).Workshop });
}
