using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Looks for an earlier start of one placed stage among the others.</summary>
internal static class EarlierStart
{
    /// <summary>A placement that starts earlier in the same mode; null for none.</summary>
    public static SchedulePart[]? Find(BenchSchedule schedule, int stage, Relaxation relaxed)
    {
        var around = new Surroundings(schedule.Problem, new ProblemHours(schedule.Problem), Others(schedule, stage), relaxed);
        var bounds = Bounds.Of(around, stage);
        if (bounds is not { Start: { } earliest, Finish: { } finish } || earliest >= schedule.Start(stage))
            return null;

        var followers = new Followers(around, stage);
        var finishes = followers.Finishes().Append(finish).Distinct().Order().ToArray();
        var mode = schedule.Parts(stage)[0].Mode;
        var placer = Placer.Of(around, stage);
        return placer.Starts(mode, Math.Max(0, earliest), schedule.Start(stage) - 1, finishes)
            .Where(start => start < schedule.Start(stage))
            .SelectMany(start => placer.At(start, mode, finishes))
            .FirstOrDefault(parts => parts[^1].End is var end
                && end >= finish && end <= schedule.Problem.Horizon && followers.Fit(end));
    }

    private static SchedulePart[]?[] Others(BenchSchedule schedule, int stage)
    {
        var moving = Followers.Group(schedule.Problem, stage);
        return [.. Enumerable.Range(0, schedule.Problem.Stages.Count)
            .Select(i => moving.Contains(i) ? null : schedule.Parts(i).ToArray())];
    }
}
