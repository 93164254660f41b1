namespace EpisodePlanner.Planning;

/// <summary>What a reference can lead to.</summary>
internal enum Referent
{
    Series,
    Milestone,
    Task,
    Episode,
    Entry,
    Place,
    Station,
}

/// <summary>Where a milestone stands: its series and its place in the story.</summary>
internal readonly record struct StoryPlace(Id Series, int Position);

/// <summary>Everything in a workshop that others can refer to.</summary>
internal sealed class Register
{
    private readonly Workshop workshop;
    private readonly Dictionary<Id, StoryPlace> milestones = [];

    public Register(Workshop workshop)
    {
        this.workshop = workshop;
        foreach (var series in workshop.Series)
        {
            for (var i = 0; i < series.Milestones.Count; i++)
            {
                milestones.TryAdd(series.Milestones[i].Id, new StoryPlace(series.Id, i));
            }
        }
    }

    /// <summary>Whether a reference leads to something.</summary>
    public bool Knows(Referent kind, Id id) => kind switch
    {
        Referent.Series => workshop.Series.Contains(id),
        Referent.Milestone => milestones.ContainsKey(id),
        Referent.Task => workshop.Tasks.Contains(id),
        Referent.Episode => workshop.Episodes.Contains(id),
        Referent.Entry => workshop.Log.Contains(id),
        Referent.Place => workshop.Places.Contains(id),
        _ => StationWord(id) is not null,
    };

    /// <summary>Whether the task has the stage.</summary>
    public bool KnowsStage(Id task, Id stage) =>
        workshop.Tasks.TryFind(task, out var found) && found.Stages.Any(s => s.Id == stage);

    /// <summary>Whether the task has the shot.</summary>
    public bool KnowsShot(Id task, Id shot) =>
        workshop.Tasks.TryFind(task, out var found) && found.Shots.Any(s => s.Id == shot);

    /// <summary>The ids that references of a kind can lead to, in the order of the file.</summary>
    public IEnumerable<Id> All(Referent kind) => kind switch
    {
        Referent.Series => Ids(workshop.Series),
        Referent.Milestone => workshop.Series.SelectMany(s => s.Milestones).Select(m => m.Id),
        Referent.Task => Ids(workshop.Tasks),
        Referent.Episode => Ids(workshop.Episodes),
        Referent.Entry => Ids(workshop.Log),
        Referent.Place => Ids(workshop.Places),
        _ => [.. Ids(workshop.People), .. Ids(workshop.Machines), .. Ids(workshop.Places)],
    };

    /// <summary>The milestone's place in a story; null where there is no such milestone.</summary>
    public StoryPlace? StoryPlace(Id milestone) => milestones.TryGetValue(milestone, out var place) ? place : null;

    /// <summary>Whether a station is a person, a machine or a place; null where there is none with this id.</summary>
    public string? StationWord(Id id) =>
        workshop.People.Contains(id) ? ThingKinds.People.Word
        : workshop.Machines.Contains(id) ? ThingKinds.Machines.Word
        : workshop.Places.Contains(id) ? ThingKinds.Places.Word
        : null;

    private static IEnumerable<Id> Ids<T>(Keyed<T> things)
        where T : class, IThing => things.Select(t => t.Id);
}
