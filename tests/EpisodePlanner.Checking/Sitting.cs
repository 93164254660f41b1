using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A person's stretch of attended work and the places where it is done.</summary>
internal readonly record struct Sitting(int Stage, int Start, int End, IReadOnlyList<int> Places);

/// <summary>The people's stretches of work.</summary>
internal static class Sittings
{
    /// <summary>Adds the stretches of an attended stage to the lists of its people.</summary>
    public static void AddTo(
        Dictionary<int, List<Sitting>> byPerson, BenchProblem problem, int stage, ReadOnlySpan<SchedulePart> parts)
    {
        if (problem.Stages[stage].Kind != StageKind.Attended || parts.Length == 0)
            return;

        var stations = problem.Stages[stage].Modes[parts[0].Mode].Stations;
        var places = Of(problem, stations, StationKind.Place);
        foreach (var person in Of(problem, stations, StationKind.Person))
        {
            if (!byPerson.TryGetValue(person, out var list))
                byPerson.Add(person, list = []);

            foreach (var part in parts)
            {
                if (part.Start < part.End)
                    list.Add(new Sitting(stage, part.Start, part.End, places));
            }
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
