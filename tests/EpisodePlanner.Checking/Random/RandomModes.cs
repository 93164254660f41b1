using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Modes of random stages: one choice of stations, or one of two or three.</summary>
internal sealed class RandomModes(Dice dice, RandomStations stations)
{
    private readonly IReadOnlyList<int> people = stations.Of(StationKind.Person);
    private readonly IReadOnlyList<int> machines = stations.Of(StationKind.Machine);
    private readonly IReadOnlyList<int> places = stations.Of(StationKind.Place);

    public IReadOnlyList<StageMode> Attended() => OneOf(() => new StageMode { Stations = Hands(30), Limits = Limits() });

    public IReadOnlyList<StageMode> Run() => OneOf(() => new StageMode
    {
        Machine = dice.Pick(machines),
        Stations = Hands(0),
        Limits = Limits(),
        RunsAlone = dice.Chance(50),
    });

    public IReadOnlyList<StageMode> Wait() => places.Count == 0 || dice.Chance(40)
        ? [new StageMode()]
        : OneOf(() => new StageMode { Stations = [dice.Pick(places)] });

    private IReadOnlyList<StageMode> OneOf(Func<StageMode> mode) =>
        [.. Enumerable.Range(0, dice.Chance(65) ? 1 : dice.Between(2, 3)).Select(_ => mode())];

    private List<int> Hands(int machineChance)
    {
        var hands = new List<int>();
        if (dice.Chance(95))
            hands.AddRange(dice.Shuffle(people.Count).Take(dice.Chance(80) ? 1 : 2).Select(i => people[i]));

        if (places.Count > 0 && dice.Chance(65))
            hands.Add(dice.Pick(places));

        if (machines.Count > 0 && dice.Chance(machineChance))
            hands.Add(dice.Pick(machines));

        return hands;
    }

    private IReadOnlyList<int> Limits() =>
        stations.Limits.Count > 0 && dice.Chance(20) ? [dice.Between(0, stations.Limits.Count - 1)] : [];
}
