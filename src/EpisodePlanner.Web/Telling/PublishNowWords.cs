using System.Globalization;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>What a series could publish now, in words that a terminal and a page share.</summary>
internal sealed class PublishNowWords(PublishNow about)
{
    private const int MostShots = 4;
    private readonly PlanNames names = new(about.Plan);

    /// <summary>What is done and could be shown.</summary>
    public string Done
    {
        get
        {
            if (about.Done.Count == 0)
            {
                return "Nothing is done that was not shown yet; an episode from footage alone would be all.";
            }

            var minutes = about.ScreenMinutes is { } screen
                ? string.Create(CultureInfo.InvariantCulture, $", about {screen.Low:0.#} to {screen.High:0.#} minutes on screen")
                : "";
            return $"Done and not shown yet: {string.Join(", ", about.Done.Select(milestone => PlanNames.Quote(milestone.Name)))}{minutes}{(about.Because is { } why ? $"; {why}" : "")}.";
        }
    }

    /// <summary>What of it is filmed.</summary>
    public string Filmed
    {
        get
        {
            var got = about.Shots.Count(shot => shot.State == ShotState.Got);
            var lacking = about.Lacking;
            return about.Shots.Count == 0 ? "No shots are listed for it."
                : lacking.Count == 0 ? $"{got} of {about.Shots.Count} shots are got, every required one among them."
                : $"{got} of {about.Shots.Count} shots are got; it lacks {string.Join(", ", lacking.Take(MostShots).Select(Lack))}{(lacking.Count > MostShots ? $" and {lacking.Count - MostShots} more" : "")}.";
        }
    }

    /// <summary>What is still to be done and the first slot that it reaches.</summary>
    public string Reaches
    {
        get
        {
            var work = $"{Words.Work(about.Episode.WorkMinutes)} of work are needed still";
            return about.Episode.Date is { } day
                ? $"{work}; the first slot it reaches is {names.Day(day)}, {Words.Time(about.Episode.Publish!.Value.InZone(about.Then.Zone).TimeOfDay)}."
                : $"{work}; it reaches no slot as things stand.";
        }
    }

    /// <summary>The uploads and silences of the series then.</summary>
    public string Then => $"Out then: {new StoryWords(about.Then).Uploads(about.Outlook)}.";

    /// <summary>What taking it would cost against the plan; null where the plan has it already.</summary>
    public string? Costs
    {
        get
        {
            if (about.Change is null)
            {
                return null;
            }

            var minutes = (int)Math.Round(about.Difference.HoursMore * 60);
            var hours = minutes == 0 ? "no hours" : $"{Words.Work(Math.Abs(minutes))} {(minutes > 0 ? "more" : "less")} work";
            var later = about.Difference.Moved.Where(move => move.IsLater).ToList();
            return $"Against the plan it costs {hours}{(later.Count == 0 ? ", and no upload later" : $"; later: {WhyWords.Moves(later)}")}.";
        }
    }

    private static string Lack(Shot shot) => $"{PlanNames.Quote(shot.Name)} ({(shot.State == ShotState.Lost ? "lost" : "missing")})";
}
