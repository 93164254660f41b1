using EpisodePlanner.Benchmarks.Measuring;
using EpisodePlanner.Benchmarks.Scale;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pictures;

namespace EpisodePlanner.Benchmarks.Pages;

/// <summary>The picture of the bench with many blocks, from a plan to the text of an SVG.</summary>
internal static class BenchDrawing
{
    private const int Wanted = 2_000;

    /// <summary>How long it takes, and how many blocks were drawn: the first number of days that has enough.</summary>
    public static (TimeSpan Time, int Blocks) Measure()
    {
        var plan = Planner.Make(new PlanRequest(GeneratedWorkshop.Make(2_000, 1), GeneratedWorkshop.PlannedAt) { Schedules = 1 });
        var view = BenchView.FromNow(plan, 7, BenchView.Desk);
        while (Blocks(plan, view) < Wanted)
        {
            view = view with { Days = view.Days + 7 };
        }

        var (median, _) = Stopwatching.Of(() => BenchPicture.Draw(plan, view, "b", key => $"/w/x/edit/tasks/{key.Task}").Inline());
        return (median, Blocks(plan, view));
    }

    private static int Blocks(Plan plan, BenchView view) =>
        BenchRows.Of(plan, view).Sum(row => row.Hands.Concat(row.Machines).Sum(lane => lane.Bars.Count));
}
