using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>
/// A bench problem of attended work without the time in which nobody is there: only the openings until a minute, one
/// closed minute after each. Such work moves by openings alone, so its schedules are those of the whole problem.
/// </summary>
internal sealed class Squeezed
{
    private readonly List<(MinuteSpan Real, int Start)> openings = [];

    public Squeezed(BenchProblem problem, int until)
    {
        var at = 0;
        foreach (var span in problem.Presence.Spans().TakeWhile(span => span.Start < until))
        {
            openings.Add((span, at));
            at += span.Length + 1;
        }

        Assert.All(problem.Stages, stage => Assert.Equal((StageKind.Attended, 0), (stage.Kind, stage.NotBefore)));
        Assert.All(problem.Links, link => Assert.Equal((LinkKind.After, 0), (link.Kind, link.Lag)));
        var created = BenchProblem.Create(new BenchInput
        {
            Horizon = at,
            Presence = Squeeze(problem.Presence),
            Stations = [.. problem.Stations.Select(station => station with { Hours = Squeeze(station.Hours.Intersect(problem.Presence)) })],
            Stages = problem.Stages,
            Links = problem.Links,
        });
        Problem = Assert.IsType<BenchProblemResult.Sound>(created).Problem;
    }

    public BenchProblem Problem { get; }

    /// <summary>The real minute at which something finishes that finishes at a squeezed one.</summary>
    public int RealFinish(int squeezed)
    {
        var (real, start) = openings.Last(opening => opening.Start <= squeezed);
        return squeezed == 0 ? 0 : real.Start + (squeezed - start);
    }

    private IntervalCalendar Squeeze(IntervalCalendar hours) => IntervalCalendar.FromSpans(
        from opening in openings
        from span in hours.Clip(opening.Real.Start, opening.Real.End).Spans()
        let shift = opening.Start - opening.Real.Start
        select new MinuteSpan(span.Start + shift, span.End + shift));
}
