using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A person's stretch of work and the places where it is done; loading and unloading are done at none.</summary>
internal readonly record struct Sitting(int Stage, int Start, int End, IReadOnlyList<int> Places);

/// <summary>The people's stretches of work.</summary>
internal static class Sittings
{
    /// <summary>Adds the stretches in which a stage takes hands to the lists of its people.</summary>
    public static void AddTo(
        Dictionary<int, List<Sitting>> byPerson, BenchProblem problem, int stage, ReadOnlySpan<SchedulePart> parts)
    {
        foreach (var part in parts)
        {
            if (part.Start < part.End && TakesHands(problem.Stages[stage], part.Kind))
                AddTo(byPerson, problem, stage, part);
        }
    }

    private static bool TakesHands(BenchStage stage, PartKind part) =>
        part == PartKind.Work
        || (part == PartKind.Load && stage.LoadTakesHands)
        || (part == PartKind.Unload && stage.UnloadTakesHands);

    private static void AddTo(Dictionary<int, List<Sitting>> byPerson, BenchProblem problem, int stage, SchedulePart part)
    {
        var stations = problem.Stages[stage].Modes[part.Mode].Stations;
        var places = part.Kind == PartKind.Work ? Of(problem, stations, StationKind.Place) : [];
        foreach (var person in Of(problem, stations, StationKind.Person))
        {
            if (!byPerson.TryGetValue(person, out var list))
                byPerson.Add(person, list = []);

            list.Add(new Sitting(stage, part.Start, part.End, places));
        }
    }

    public static IReadOnlyList<int> Of(BenchProblem problem, IReadOnlyList<int> stations, StationKind kind) =>
        [.. stations.Where(s => problem.Stations[s].Kind == kind)];

    /// <summary>The longest setting up at some places; 0 for none.</summary>
    public static int SetUp(BenchProblem problem, IEnumerable<int> places) =>
        places.Select(p => problem.Stations[p].SetUpMinutes).DefaultIfEmpty().Max();

    /// <summary>The longest tidying at some places; 0 for none.</summary>
    public static int Tidy(BenchProblem problem, IEnumerable<int> places) =>
        places.Select(p => problem.Stations[p].TidyMinutes).DefaultIfEmpty().Max();
}
