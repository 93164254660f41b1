using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>A run starts where load and run are possible, and is unloaded when hands or somebody present allow.</summary>
internal sealed class RunPlacer(Surroundings around, int stage) : Placer(around, stage)
{
    private readonly Dictionary<int, Hours> starts = [];
    private readonly Dictionary<int, Hours> unloads = [];

    public override IEnumerable<SchedulePart[]> At(int start, int mode, IReadOnlyList<int>? finishes)
    {
        if (!StartsOf(mode).HasMinute(start))
            return [];

        var run = start + (About.Begun ? 0 : About.LoadMinutes);
        var free = Around.Free(About.Modes[mode].Machine);
        return from unloadMode in Enumerable.Range(0, About.Modes.Count)
               where About.Modes[unloadMode].Machine == About.Modes[mode].Machine
               from unload in Unloads(unloadMode, run + About.Minutes, finishes)
                   .TakeWhile(u => free.HasAll(start, u + About.UnloadMinutes))
               select Parts(start, run, mode, unload, unloadMode);
    }

    public override IEnumerable<int> Starts(int mode, int from, int to, IReadOnlyList<int> finishes)
    {
        var possible = StartsOf(mode).And(Hours.From([new Stretch(from, to + 1)]));
        var freed = possible.And(Around.Free(About.Modes[mode].Machine));
        return possible.Stretches.Concat(freed.Stretches).Select(s => s.Start).Distinct();
    }

    private SchedulePart[] Parts(int start, int run, int mode, int unload, int unloadMode)
    {
        var parts = new List<SchedulePart>();
        if (!About.Begun)
            parts.Add(new SchedulePart(PartKind.Load, start, run, mode));

        parts.Add(new SchedulePart(PartKind.Run, run, run + About.Minutes, mode));
        parts.Add(new SchedulePart(PartKind.Unload, unload, unload + About.UnloadMinutes, unloadMode));
        return [.. parts];
    }

    private IEnumerable<int> Unloads(int mode, int runEnd, IReadOnlyList<int>? finishes)
    {
        var noticed = About.LookAt is { } times ? Around.LookAt(times).Next(runEnd) : runEnd;
        if (noticed is not { } earliest)
            yield break;

        if (!unloads.TryGetValue(mode, out var possible))
            unloads.Add(mode, possible = ByHand(About.Modes[mode], 0, About.UnloadMinutes, About.UnloadTakesHands));

        if (finishes is null)
        {
            for (var at = possible.Next(earliest); at <= Around.Problem.Horizon; at = possible.Next(at.Value + 1))
                yield return at.Value;

            yield break;
        }

        var wanted = finishes.Select(f => Math.Max(earliest, f - About.UnloadMinutes)).Append(earliest).Distinct().Order();
        foreach (var at in wanted.Select(w => possible.Next(w)).OfType<int>())
            yield return at;
    }

    private Hours StartsOf(int mode)
    {
        if (!starts.TryGetValue(mode, out var result))
            starts.Add(mode, result = About.Begun ? Hours.From([new Stretch(0, 1)]) : FindStarts(About.Modes[mode]));

        return result;
    }

    private Hours FindStarts(StageMode mode)
    {
        var machine = Around.Open([mode.Machine], mode.Limits);
        var whole = About.LoadMinutes + About.Minutes;
        var result = ByHand(mode, 0, About.LoadMinutes, About.LoadTakesHands);
        if (whole > 0)
            result = result.And(machine.And(Around.Free(mode.Machine)).StartsFor(0, whole));

        return mode.RunsAlone || About.FitMinutes == 0
            ? result
            : result.And(machine.And(Around.Presence).StartsFor(About.LoadMinutes, About.FitMinutes));
    }

    private Hours ByHand(StageMode mode, int offset, int length, bool takesHands)
    {
        if (!takesHands)
            return Around.Presence.StartsFor(offset, length);

        var hands = Around.Open(mode.Stations, []);
        foreach (var person in Sittings.Of(Around.Problem, mode.Stations, StationKind.Person))
            hands = hands.And(Around.People.Windows(person, []));

        return hands.And(Around.AllFree(mode.Stations)).StartsFor(offset, length);
    }
}
