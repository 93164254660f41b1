using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Web.Telling;

/// <summary>Tells chains: because … because …</summary>
internal sealed class ChainText(ISheet page, Plan plan)
{
    private readonly PlanNames names = new(plan);
    private readonly Dictionary<StageKey, PlannedStage> stages = plan.Stages.ToDictionary(stage => stage.Key);
    private readonly HashSet<Id> told = [];

    /// <summary>Why an episode goes out when it does; where that was told before, a word about where.</summary>
    public void Write(PlannedEpisode episode, int most)
    {
        if (!told.Add(episode.Id))
        {
            page.Below("because of the chain told above");
            return;
        }

        if (PublishReason.Of(plan, episode) is { } reason)
        {
            page.Below($"because {PublishWords.Of(reason, episode, names)}");
        }

        Write(episode.Chain, most);
    }

    private void Write(ValueList<ChainLink> chain, int most)
    {
        ChainLink? before = null;
        foreach (var step in ChainSteps.Of(chain, most))
        {
            if (step.LeftOut > 0)
            {
                page.Below($"({(step.LeftOut == 1 ? "1 step" : $"{step.LeftOut} steps")} left out)");
            }

            page.Below($"because {Say(step.Link, step.LeftOut == 0 && IsNamed(before, step.Link))}");
            before = step.Link;
        }
    }

    /// <summary>Whether the line above ends with this step, and what holds it is another one.</summary>
    private static bool IsNamed(ChainLink? before, ChainLink link) =>
        before?.Cause.Stage is { } named && ChainSteps.AreOfOne(named, link.Stage) && link.Cause.Stage is not null;

    private string Say(ChainLink link, bool isNamed) => (isNamed, link.Cause.Kind) switch
    {
        (true, _) => $"{link.Cause.Says}{Length(link)}",
        (_, CauseKind.Predecessor) => $"{PlanNames.Quote(link.Name)} starts only when {link.Cause.Says}{Length(link)}",
        _ => $"{PlanNames.Quote(link.Name)} starts {names.Moment(link.Start)}: {link.Cause.Says}",
    };

    /// <summary>How much the step that is waited for takes.</summary>
    private string Length(ChainLink link)
    {
        if (link.Cause.Kind != CauseKind.Predecessor || link.Cause.Stage is not { } key || stages.GetValueOrDefault(key) is not { Minutes: > 0, Start: { } start } stage)
        {
            return "";
        }

        var what = stage.Kind switch
        {
            StageKind.Attended => "of work",
            StageKind.Run => "of machine time",
            _ => "of waiting",
        };
        return $" ({Words.Minutes(stage.Minutes)} {what} from {names.ShortDay(names.DateOf(start))})";
    }
}
