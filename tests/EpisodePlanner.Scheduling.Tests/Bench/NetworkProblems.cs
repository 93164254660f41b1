using EpisodePlanner.Checking.Textbook;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Tests.Bench;

/// <summary>Calendar-free networks as bench problems: one unit is a minute, every station open at all times.</summary>
internal static class NetworkProblems
{
    public static BenchProblem Of(TextbookNetwork textbook, int hands = 1) => Of(
        [.. textbook.Activities],
        [.. textbook.Links.Select(l => new NetworkLink(IndexOf(textbook, l.From), IndexOf(textbook, l.To), l.Kind, l.Lag))],
        hands);

    /// <summary>Unbroken work, each stage by any one of so many people.</summary>
    public static BenchProblem Of(IReadOnlyList<TextbookActivity> activities, IReadOnlyList<NetworkLink> links, int hands = 1)
    {
        var horizon = (int)(1 + activities.Sum(a => a.Duration) + links.Sum(l => Math.Abs(l.Lag)));
        var always = IntervalCalendar.Always(horizon);
        return Sound.Problem(new BenchInput
        {
            Horizon = horizon,
            Presence = always,
            Stations = [.. Enumerable.Range(0, hands).Select(i => new Station($"Person {i}", StationKind.Person, always))],
            Stages =
            [
                .. activities.Select(a => new BenchStage
                {
                    Name = a.Name,
                    Kind = StageKind.Attended,
                    Minutes = (int)a.Duration,
                    MinimumBlock = Math.Max(1, (int)a.Duration),
                    Modes = [.. Enumerable.Range(0, hands).Select(i => new StageMode { Stations = [i] })],
                }),
            ],
            Links = [.. links.Select(l => new BenchLink(l.From, l.To, l.Kind) { Lag = (int)l.Lag })],
        });
    }

    public static int IndexOf(TextbookNetwork textbook, string activity) =>
        textbook.Activities.Select(each => each.Name).ToList().IndexOf(activity);
}
