using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>One stage having one station to itself for some minutes.</summary>
internal readonly record struct Taking(int Stage, int Station, int Start, int End);

/// <summary>Which stations the parts of a stage take, and when.</summary>
internal static class Takings
{
    /// <summary>Adds every taking of some length of a well-formed stage.</summary>
    public static void AddTo(List<Taking> takings, BenchProblem problem, int stage, ReadOnlySpan<SchedulePart> parts)
    {
        switch (problem.Stages[stage].Kind)
        {
            case StageKind.Attended:
                AddAttended(takings, problem, stage, parts);
                break;
            case StageKind.Run:
                AddRun(takings, problem.Stages[stage], stage, parts);
                break;
            default:
                AddStations(takings, problem.Stages[stage], stage, parts[0]);
                break;
        }
    }

    private static void AddAttended(List<Taking> takings, BenchProblem problem, int stage, ReadOnlySpan<SchedulePart> parts)
    {
        var about = problem.Stages[stage];
        foreach (var station in about.Modes[parts[0].Mode].Stations)
        {
            if (about.StaysSetUp && problem.Stations[station].Kind != StationKind.Person)
            {
                Add(takings, new Taking(stage, station, parts[0].Start, parts[^1].End));
                continue;
            }

            foreach (var part in parts)
                Add(takings, new Taking(stage, station, part.Start, part.End));
        }
    }

    private static void AddRun(List<Taking> takings, BenchStage about, int stage, ReadOnlySpan<SchedulePart> parts)
    {
        Add(takings, new Taking(stage, about.Modes[parts[0].Mode].Machine, parts[0].Start, parts[^1].End));
        if (about.LoadTakesHands && parts[0].Kind == PartKind.Load)
            AddStations(takings, about, stage, parts[0]);

        if (about.UnloadTakesHands)
            AddStations(takings, about, stage, parts[^1]);
    }

    private static void AddStations(List<Taking> takings, BenchStage about, int stage, SchedulePart part)
    {
        foreach (var station in about.Modes[part.Mode].Stations)
            Add(takings, new Taking(stage, station, part.Start, part.End));
    }

    private static void Add(List<Taking> takings, Taking taking)
    {
        if (taking.Start < taking.End)
            takings.Add(taking);
    }
}
