namespace EpisodePlanner.Planning;

/// <summary>Episodes: milestones of their own series, each shown once, in the order of the story.</summary>
internal sealed class EpisodeRules
{
    private readonly Inspection inspection;
    private readonly Dictionary<Id, Id> shownBy = [];

    private EpisodeRules(Inspection inspection) => this.inspection = inspection;

    public static void Check(Inspection inspection)
    {
        var rules = new EpisodeRules(inspection);
        foreach (var episode in inspection.Workshop.Episodes)
        {
            var at = ThingKinds.Episodes.At(episode.Id);
            inspection.Leads(at.Member("series"), Referent.Series, episode.Series);
            inspection.Leads(at.Member("tells"), Referent.Entry, episode.Tells);
            rules.CheckCut(episode, at.Member("milestones"));
            EstimateRules.Check(inspection, episode.Tail, at.Member("tail"));
        }
    }

    private void CheckCut(Episode episode, Spot at)
    {
        (Id Milestone, int Position)? latest = null;
        foreach (var (milestone, spot) in episode.Milestones.At(at))
        {
            if (!inspection.Leads(spot, Referent.Milestone, milestone))
            {
                continue;
            }

            CheckShownOnce(episode, milestone, spot);
            var (series, position) = inspection.Register.StoryPlace(milestone)!.Value;
            if (series != episode.Series)
            {
                inspection.Refuse(
                    spot,
                    $"The milestone '{milestone}' is of series '{series}'; an episode of '{episode.Series}' can't show it.");
            }
            else if (position < latest?.Position)
            {
                inspection.Refuse(
                    spot,
                    $"The milestone '{milestone}' comes before '{latest?.Milestone}' in the story; put it before that here too.");
            }
            else
            {
                latest = (milestone, position);
            }
        }
    }

    private void CheckShownOnce(Episode episode, Id milestone, Spot at)
    {
        if (!shownBy.TryAdd(milestone, episode.Id))
        {
            inspection.Refuse(
                at,
                $"The milestone '{milestone}' is already shown by episode '{shownBy[milestone]}'; leave it in one of them.");
        }
    }
}
