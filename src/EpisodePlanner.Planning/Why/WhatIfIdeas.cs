namespace EpisodePlanner.Planning;

/// <summary>
/// Finds what could make a difference to an episode: only what its chain, or the way from ready to published, touches.
/// Nothing off the chain can bring it forward by itself.
/// </summary>
internal static class WhatIfIdeas
{
    /// <summary>The ideas for an episode, each once.</summary>
    public static IReadOnlyList<WhatIfIdea> Of(Plan plan, PlannedEpisode episode)
    {
        var chain = new EpisodeChain(plan, episode);
        return
        [
            .. MoreStations.Of(chain),
            .. OpenDays.Of(chain),
            .. ShorterWork.Of(chain),
            .. RunsLeftAlone.Of(chain),
            .. LooserPublishing.Of(plan, episode),
        ];
    }
}

/// <summary>The stages and stations that decide when an episode is ready.</summary>
internal sealed class EpisodeChain
{
    private readonly List<Id> stations;

    public EpisodeChain(Plan plan, PlannedEpisode episode)
    {
        Plan = plan;
        Episode = episode;
        var byKey = plan.Stages.ToDictionary(stage => stage.Key);
        Stages = [.. episode.Chain.Select(link => byKey[link.Stage]).Distinct()];
        stations =
        [
            .. Stages.SelectMany(stage => stage.Parts).SelectMany(part => part.Stations)
                .Concat(episode.Chain.Select(link => link.Cause.Station).OfType<Id>())
                .GroupBy(id => id)
                .OrderByDescending(group => group.Count())
                .ThenBy(group => group.Key)
                .Select(group => group.Key),
        ];
    }

    public Plan Plan { get; }

    public PlannedEpisode Episode { get; }

    public Workshop Workshop => Plan.Request.Workshop;

    /// <summary>The stages of the chain, the last first.</summary>
    public IReadOnlyList<PlannedStage> Stages { get; }

    /// <summary>The people that the chain uses or waits for, the busiest first.</summary>
    public IEnumerable<Person> People => stations.Select(Person).OfType<Person>();

    /// <summary>The machines that the chain uses or waits for, the busiest first.</summary>
    public IEnumerable<Machine> Machines => stations.Select(Workshop.Machines.Find).OfType<Machine>();

    /// <summary>The places that the chain uses or waits for, the busiest first.</summary>
    public IEnumerable<Place> Places => stations.Select(Workshop.Places.Find).OfType<Place>();

    private Person? Person(Id id) => StationTable.PeopleOf(Workshop).FirstOrDefault(person => person.Id == id);
}
