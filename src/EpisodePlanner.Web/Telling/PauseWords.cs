using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>A series that rests or ends, in words.</summary>
internal sealed class PauseWords(SeriesPause pause)
{
    private readonly PlanNames names = new(pause.Difference.Before);

    /// <summary>What it frees.</summary>
    public string Frees => (pause.FreedMinutes, pause.Until) switch
    {
        ( <= 0, _) => "It frees no hours: nothing of it is planned before then.",
        (var minutes, { } until) => $"Until {names.Day(until)} it frees {Words.Work(minutes)} of hands-on work for the others.",
        var (minutes, _) => $"It frees {Words.Work(minutes)} of hands-on work for the others.",
    };

    /// <summary>What supporters can be told, from what the plan and the uploads know.</summary>
    public string Notice
    {
        get
        {
            var outlook = pause.Difference.Before.Series.First(one => one.Series == pause.Series.Id);
            var last = outlook.LastUpload is { } day ? $" Its last episode came out on {names.Day(day)}." : " None of its episodes is out yet.";
            return pause.Until is { } until
                ? $"{pause.Series.Name} rests openly until {names.Day(until)}.{last}{Still()}"
                : $"{pause.Series.Name} is finished.{last}{Dropped()}";
        }
    }

    private string Still() => pause.Difference.Then.Episodes.FirstOrDefault(episode => episode.Series == pause.Series.Id) is { Date: { } day }
        ? $" The next is planned for {names.Day(day)}."
        : "";

    private string Dropped() => pause.Untold.Count == 0
        ? ""
        : $" What was planned beyond it will not be told: {string.Join(", ", pause.Untold.Select(milestone => PlanNames.Quote(milestone.Name)))}.";
}
