namespace EpisodePlanner.Scheduling.Causes;

/// <summary>A stretch for which a stage takes a station.</summary>
/// <param name="Start">The first minute.</param>
/// <param name="End">The minute after the last.</param>
/// <param name="Stage">The stage.</param>
/// <param name="PlaceMark">How free time remembers the place of the work.</param>
internal readonly record struct Holding(int Start, int End, int Stage, int PlaceMark);

/// <summary>Who takes which station when, in a finished schedule.</summary>
internal sealed class Occupancy
{
    private readonly Holding[][] byStation;
    private readonly int[] rank;

    public Occupancy(BenchSchedule schedule)
    {
        var lists = schedule.Problem.Stations.Select(_ => new List<Holding>()).ToArray();
        rank = new int[schedule.Problem.Stages.Count];
        for (var i = 0; i < schedule.Order.Count; i++)
        {
            rank[schedule.Order[i]] = i;
            AddStage(schedule, schedule.Order[i], lists);
        }

        byStation = [.. lists.Select(list => list.OrderBy(h => h.Start).ThenBy(h => h.End).ToArray())];
    }

    /// <summary>Whatever takes a station at some time of [from, to), ascending.</summary>
    public ReadOnlySpan<Holding> Within(int station, int from, int to)
    {
        var holdings = byStation[station];
        var first = FirstEndingAfter(holdings, from);
        var last = first;
        while (last < holdings.Length && holdings[last].Start < to)
        {
            last++;
        }

        return holdings.AsSpan(first, last - first);
    }

    /// <summary>The last holding of another stage that ends at or before a minute, or null.</summary>
    public Holding? LastEndingBy(int station, int minute, int except) =>
        LastEndingBy(station, minute, holder => holder != except);

    /// <summary>The same among stages that were placed before this one: what came later has kept it from nothing.</summary>
    public Holding? LastInItsWay(int station, int minute, int stage) =>
        LastEndingBy(station, minute, holder => WasPlacedBefore(holder, stage));

    /// <summary>Whether one stage had its place when another one was given its own.</summary>
    public bool WasPlacedBefore(int stage, int other) => rank[stage] < rank[other];

    private Holding? LastEndingBy(int station, int minute, Func<int, bool> isMeant)
    {
        var holdings = byStation[station];
        for (var i = FirstEndingAfter(holdings, minute) - 1; i >= 0; i--)
        {
            if (isMeant(holdings[i].Stage))
            {
                return holdings[i];
            }
        }

        return null;
    }

    private static int FirstEndingAfter(Holding[] holdings, int minute)
    {
        var (low, high) = (0, holdings.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = holdings[middle].End <= minute ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private static void AddStage(BenchSchedule schedule, int stage, List<Holding>[] lists)
    {
        var spec = schedule.Problem.Stages[stage];
        var mode = spec.Modes[schedule.Parts(stage)[0].Mode];
        var whole = new MinuteSpan(schedule.Start(stage), schedule.Finish(stage));
        if (spec.Kind == StageKind.Run)
        {
            Add(lists, mode.Machine, whole, stage, 0);
        }

        var mark = spec.Kind == StageKind.Run ? 0 : 1 + mode.Stations.FirstOrDefault(s => schedule.Problem.Stations[s].Kind == StationKind.Place, -1);
        foreach (var part in schedule.Parts(stage))
        {
            var taken = part.Kind switch
            {
                PartKind.Work when spec.StaysSetUp => mode.Stations.Where(s => IsPerson(schedule, s)),
                PartKind.Work or PartKind.Wait => mode.Stations,
                PartKind.Load when spec.LoadTakesHands => mode.Stations,
                PartKind.Unload when spec.UnloadTakesHands => spec.Modes[part.Mode].Stations,
                _ => [],
            };
            foreach (var station in taken)
            {
                Add(lists, station, new MinuteSpan(part.Start, part.End), stage, mark);
            }
        }

        foreach (var station in spec.StaysSetUp ? mode.Stations.Where(s => !IsPerson(schedule, s)) : [])
        {
            Add(lists, station, whole, stage, mark);
        }
    }

    private static bool IsPerson(BenchSchedule schedule, int station) =>
        schedule.Problem.Stations[station].Kind == StationKind.Person;

    private static void Add(List<Holding>[] lists, int station, MinuteSpan span, int stage, int mark)
    {
        if (span.Length > 0)
        {
            lists[station].Add(new Holding(span.Start, span.End, stage, mark));
        }
    }
}
