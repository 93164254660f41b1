using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Checking;

/// <summary>Stages and links of a random problem.</summary>
internal sealed class RandomStages(Dice dice, ProblemSize size, RandomStations stations)
{
    private readonly RandomModes modes = new(dice, stations);

    public (IReadOnlyList<BenchStage> Stages, IReadOnlyList<BenchLink> Links) Make()
    {
        // Stages wait only for those before them in this order, so that there is no circle.
        var order = dice.Shuffle(size.Stages);
        var stages = Enumerable.Range(0, size.Stages).Select(Stage).ToArray();
        var links = new RandomLinks(dice, size, stations).Make(order);
        for (var i = 1; i < order.Length; i++)
        {
            if (stages[order[i]].Kind == StageKind.Wait && IsHost(stages[order[i - 1]]) && dice.Chance(70))
                Glue(stages, links, order[i - 1], order[i]);
        }

        if (dice.Chance(25))
            Begin(stages, dice.Between(0, size.Stages - 1));

        return (stages, links);
    }

    private static bool IsHost(BenchStage stage) => stage is { Kind: StageKind.Attended, Minutes: > 0 };

    private static void Glue(BenchStage[] stages, List<BenchLink> links, int host, int wait)
    {
        stages[wait] = stages[wait] with { GluedTo = host, Modes = [stages[wait].Modes[0]], NotBefore = 0 };
        links.RemoveAll(link => link.To == wait);
        links.Add(new BenchLink(host, wait, LinkKind.After));
    }

    private static void Begin(BenchStage[] stages, int stage)
    {
        if (stages[stage].GluedTo == -1)
            stages[stage] = stages[stage] with { Begun = true };
    }

    private BenchStage Stage(int index)
    {
        var kind = dice.Between(1, 100) switch
        {
            <= 50 => StageKind.Attended,
            <= 80 when size.Machines > 0 => StageKind.Run,
            _ => StageKind.Wait,
        };
        var stage = kind switch
        {
            StageKind.Attended => Attended(index),
            StageKind.Run => Run(index),
            _ => Wait(index),
        };
        return stage with
        {
            NotBefore = dice.Chance(15) ? dice.Between(1, size.Horizon / 3) : 0,
            Due = dice.Chance(40) ? dice.Between(1, size.Horizon) : int.MaxValue,
        };
    }

    private BenchStage Attended(int index)
    {
        var minutes = dice.Chance(8) ? 0 : dice.Between(1, Math.Max(3, size.Day * 2 / 3));
        return new BenchStage
        {
            Name = $"Work {index}",
            Kind = StageKind.Attended,
            Minutes = minutes,
            Modes = modes.Attended(),
            MinimumBlock = dice.Chance(40) ? 1 : dice.Between(1, minutes + 2),
            StaysSetUp = dice.Chance(30),
        };
    }

    private BenchStage Run(int index)
    {
        var minutes = dice.Between(1, Math.Max(3, size.Day * 2 / 3));
        var (load, unload) = (dice.Between(0, Math.Max(1, size.Day / 10)), dice.Between(0, Math.Max(1, size.Day / 10)));
        return new BenchStage
        {
            Name = $"Run {index}",
            Kind = StageKind.Run,
            Minutes = minutes,
            Modes = modes.Run(),
            LoadMinutes = load,
            UnloadMinutes = unload,
            LoadTakesHands = load > 0 && dice.Chance(35),
            UnloadTakesHands = unload > 0 && dice.Chance(35),
            FitMinutes = minutes + (dice.Chance(50) ? 0 : dice.Between(0, minutes / 3)),
            LookAt = dice.Chance(20) ? stations.Moments() : null,
        };
    }

    private BenchStage Wait(int index) => new()
    {
        Name = $"Wait {index}",
        Kind = StageKind.Wait,
        Minutes = dice.Between(0, size.Day),
        Modes = modes.Wait(),
        WaitHours = dice.Chance(30) ? stations.SomeHours() : null,
    };
}
