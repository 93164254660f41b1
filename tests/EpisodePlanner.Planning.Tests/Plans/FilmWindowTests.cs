namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Random small workshops with shots: the time that is kept for a shot lies in its window, whatever else there is.</summary>
public sealed class FilmWindowTests
{
    private const int Workshops = 150;

    [Fact]
    public void Make_ShotsOfRandomWorkshops_LieInTheirWindows()
    {
        var (before, after, bounded) = (0, 0, 0);
        for (var seed = 0; seed < Workshops; seed++)
        {
            var plan = Trial.Plan(WithShots(seed), TinyWorkshops.Now);
            foreach (var film in plan.Stages.Where(stage => stage is { Key.IsShot: true, Start: not null }))
            {
                var task = plan.Request.Workshop.Tasks.Find(film.Key.Task)!;
                var shot = task.Shots.First(s => s.Id == film.Key.Shot);
                var stages = plan.Stages.Where(stage => stage.Key.IsTask).ToLookup(stage => stage.Key.Task);
                if (shot.Moment == ShotMoment.Before)
                {
                    Assert.All(stages[task.Id], stage => Assert.True(stage.Start is null || stage.Start >= film.Finish, $"Seed {seed}"));
                    Assert.All(task.Links, link => Assert.All(stages[link.Task], stage => Assert.True(stage.Finish <= film.Start, $"Seed {seed}")));
                    before++;
                    continue;
                }

                Assert.All(stages[task.Id], stage => Assert.True(stage.Finish <= film.Start, $"Seed {seed}"));
                after++;
                if (shot.LostBy is { } lostBy && !plan.Findings.Any(f => f.Says.Contains("comes first", StringComparison.Ordinal)))
                {
                    Assert.All(stages[lostBy], stage => Assert.True(stage.Start is null || stage.Start >= film.Finish, $"Seed {seed}"));
                    bounded++;
                }
            }
        }

        Assert.True(before > 30 && after > 30 && bounded > 15, $"{before} before, {after} after, {bounded} with an end: too few to tell.");
    }

    [Fact]
    public void Make_NoShotIsMissing_LeavesEveryDateAsItIs()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var without = Trial.Plan(TinyWorkshops.File(seed), TinyWorkshops.Now);
            var workshop = WithShots(seed);
            var got = Trial.Plan(workshop with { Tasks = workshop.Tasks.Select(task => task with { Shots = task.Shots.Select(Got).ToValueList() }).ToKeyed() }, TinyWorkshops.Now);

            Assert.Equal(
                without.Stages.Select(stage => (stage.Key, stage.Start, stage.Finish)),
                got.Stages.Select(stage => (stage.Key, stage.Start, stage.Finish)));
            Assert.Equal(without.Episodes.Select(e => (e.Id, e.Publish)), got.Episodes.Select(e => (e.Id, e.Publish)));
        }
    }

    private static Shot Got(Shot shot) => shot with { State = ShotState.Got };

    private static Workshop WithShots(int seed)
    {
        var (workshop, dice) = (Trial.Read(TinyWorkshops.File(seed)), new Dice(seed + 1_000));
        var ids = workshop.Tasks.Select(task => task.Id).ToList();
        return workshop with { Tasks = workshop.Tasks.Select(task => task with { Shots = [Shot(dice, ids, task.Id, "a"), Shot(dice, ids, task.Id, "b")] }).ToKeyed() };
    }

    private static Shot Shot(Dice dice, List<Id> tasks, Id of, string id)
    {
        var moment = (ShotMoment)dice.Between(0, 2);
        var other = tasks[dice.Between(0, tasks.Count - 1)];
        return new Shot
        {
            Id = new Id(id),
            Name = id,
            Moment = moment,
            OnceOnly = dice.Between(0, 2) > 0,
            Required = dice.Between(0, 1) == 0,
            Minutes = dice.Between(0, 2),
            LostBy = moment == ShotMoment.After && other != of ? other : null,
        };
    }
}
