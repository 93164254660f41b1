using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>
/// The search: schedules by rules of priority, then a population of sampled schedules, each of which in turn is crossed
/// with another one. A child is decoded backward and forward, so every member is doubly justified and a child costs two
/// schedules. It takes the place of its first parent where it is not worse, else that of the worst member where it is
/// better. Where more than the end counts, justification may cost more than it wins, and every second list is decoded
/// forward alone.
/// </summary>
/// <remarks>
/// The frame is that of the hybrid genetic algorithms named at <see cref="WindowCrossover"/>. Found by measuring: a list
/// crossed by finishes and decoded backward first is worth as much as one decoded in three passes, and costs a third
/// less; nothing already met is decoded again.
/// </remarks>
internal sealed class PopulationSearch
{
    /// <summary>Budgets up to this are spent on one population; beyond, populations grow until the search is stopped.</summary>
    private const int OnePopulation = 1_000_000;
    private const int FirstStage = 5_000;
    private const int StageGrowth = 8;
    private const int LeastSize = 8;
    private const int GreatestSize = 2_000;

    /// <summary>A population of large problems may fill so many numbers.</summary>
    private const int GreatestArea = 1 << 23;

    /// <summary>So many lists are tried in search of one not met before; then what comes is decoded.</summary>
    private const int Tries = 20;

    /// <summary>After so many sweeps in which no member became better a population has nothing more to give.</summary>
    private const int MostIdleSweeps = 5;

    private readonly ScheduleMaker maker;
    private readonly int parts;
    private readonly bool alwaysJustifies;
    private readonly int[][] rules;
    private readonly RegretSampler sampler;
    private readonly WindowCrossover crossover;
    private readonly ListMutation mutation;
    private readonly SplitMix dice;
    private readonly Marks met = new(16);
    private readonly int[] keys;
    private bool justifies = true;

    public PopulationSearch(PackedProblem problem, ScheduleMaker maker, IScheduleObjective objective, ulong seed)
    {
        (this.maker, parts, alwaysJustifies) = (maker, objective.Parts, objective.OnlyEndCounts);
        dice = new SplitMix(seed);
        var times = NetworkTimes.Of(problem.Network);
        int[] ByPlace(IReadOnlyList<long> byActivity) => [.. problem.Network.Order.Select(activity => (int)byActivity[activity])];
        rules = [ByPlace(times.LateFinish), ByPlace(times.LateStart), ByPlace(times.EarlyStart), ByPlace(times.EarlyFinish)];
        sampler = new RegretSampler(maker.Columns, PackedColumns.Mirrored(problem), rules[0], dice);
        crossover = new WindowCrossover(problem, maker.Columns, dice);
        mutation = new ListMutation(maker.Columns, dice);
        keys = new int[problem.Count];
    }

    private Incumbent Incumbent => maker.Incumbent;

    private TwoWayDecoder Decoder => maker.Decoder;

    /// <summary>Looks until the budget is used up, nothing can be better, or it is told to stop.</summary>
    public void Run()
    {
        var stage = Incumbent.Budget <= OnePopulation ? Incumbent.Budget : FirstStage;
        var population = NewPopulation(stage);
        TakeRules(population);
        while (Incumbent.MayGoOn)
        {
            Fill(population);
            Evolve(population, Incumbent.Generated + (long)stage);
            stage = Incumbent.Budget <= OnePopulation ? stage : (int)Math.Min(int.MaxValue, (long)stage * StageGrowth);
            population = Successor(population, stage);
        }
    }

    /// <summary>
    /// Members for a budget: 0.65 times its 9/16th power, found by measuring budgets of 1,000 to 50,000. Roots are
    /// rounded alike on every machine, other powers need not be.
    /// </summary>
    private Population NewPopulation(int budget)
    {
        var root = Math.Sqrt(budget);
        var size = (int)(0.65 * root * Math.Sqrt(Math.Sqrt(Math.Sqrt(root))));
        var most = Math.Clamp(GreatestArea / Math.Max(1, keys.Length), LeastSize, GreatestSize);
        return new Population(Math.Clamp(size, LeastSize, most), keys.Length, parts);
    }

    /// <summary>A new population that knows the best member of the last one.</summary>
    private Population Successor(Population last, int budget)
    {
        var next = NewPopulation(budget);
        if (last.Count > 0)
        {
            var best = 0;
            for (var member = 1; member < last.Count; member++)
            {
                best = last.Compare(member, best) < 0 ? member : best;
            }

            next.Add(last.Finishes(best), last.End(best), last.Row(best));
        }

        return next;
    }

    /// <summary>Least latest finish and start going forward; greatest earliest start and finish going backward.</summary>
    private void TakeRules(Population population)
    {
        for (var rule = 0; rule < rules.Length && Incumbent.MayGoOn; rule++)
        {
            if (rule < 2)
            {
                Take(population, DecodeForward(rules[rule]));
                Decoder.PrepareBackward(Decoder.Finishes);
            }
            else
            {
                Decoder.PrepareBackward(rules[rule]);
            }

            Take(population, Incumbent.MayGoOn ? Justify() : ListOutcome.Useless);
        }
    }

    private void Fill(Population population)
    {
        maker.Deadlines.Clear();
        for (var tries = 0; tries < 2 * population.Capacity && !population.IsFull && Incumbent.MayGoOn; tries++)
        {
            sampler.Draw(keys);
            Decoder.PrepareBackward(keys);
            Take(population, Decode());
        }
    }

    private void Take(Population population, ListOutcome outcome)
    {
        if (outcome == ListOutcome.Fresh && !population.IsFull)
        {
            population.Add(Decoder.Finishes, Decoder.End, Incumbent.Row);
        }
    }

    /// <summary>Decodes the list in both directions or, where justification may lose, forward alone every second time.</summary>
    private ListOutcome Decode()
    {
        justifies = alwaysJustifies || !justifies;
        return justifies ? Justify() : DecodeForward(keys);
    }

    /// <summary>One schedule, in ascending order of keys.</summary>
    private ListOutcome DecodeForward(ReadOnlySpan<int> byKey) =>
        !maker.TryForward(byKey) ? ListOutcome.Useless : met.Add(~Decoder.ForwardMark) ? ListOutcome.Fresh : ListOutcome.Met;

    /// <summary>One or two schedules: the backward list prepared last, and the forward list that follows from it.</summary>
    private ListOutcome Justify()
    {
        maker.Backward();
        if (!met.Add(Decoder.BackwardMark))
        {
            return ListOutcome.Met;
        }

        if (!Incumbent.MayGoOn || !maker.TryForwardAgain())
        {
            return ListOutcome.Useless;
        }

        return met.Add(~Decoder.ForwardMark) ? ListOutcome.Fresh : ListOutcome.Met;
    }

    private void Evolve(Population population, long end)
    {
        var idle = 0;
        while (population.Count > 1 && Incumbent.MayGoOn && Incumbent.Generated < end && idle < MostIdleSweeps)
        {
            idle++;
            for (var member = 0; member < population.Count && Incumbent.MayGoOn; member++)
            {
                PrepareChild(population, member);
                maker.Deadlines.Set(population.Row(population.Worst));
                var outcome = Decode();
                mutation.Learn(wasMet: outcome == ListOutcome.Met);
                if (outcome == ListOutcome.Fresh && Replaces(population, member))
                {
                    idle = 0;
                }
            }
        }
    }

    private void PrepareChild(Population population, int member)
    {
        for (var tries = 0; tries < Tries; tries++)
        {
            var other = Tournament(population, member);
            crossover.Write(population.Finishes(member), population.End(member), population.Finishes(other), population.End(other), keys);
            mutation.Move(keys);
            Decoder.PrepareBackward(keys);
            if (met.Add(Decoder.BackwardListMark))
            {
                return;
            }

            mutation.Learn(wasMet: true);
        }
    }

    /// <summary>The better one of two members drawn at random, the first parent aside.</summary>
    private int Tournament(Population population, int first)
    {
        var (left, right) = (Other(population, first), Other(population, first));
        return population.Compare(left, right) <= 0 ? left : right;
    }

    private int Other(Population population, int first)
    {
        var drawn = dice.Below(population.Count - 1);
        return drawn < first ? drawn : drawn + 1;
    }

    /// <summary>Takes the last schedule in where it may; whether it is better than what it takes the place of.</summary>
    private bool Replaces(Population population, int member)
    {
        var row = Incumbent.Row;
        var place = row.SequenceCompareTo(population.Row(member)) <= 0 ? member : population.Worst;
        var compared = row.SequenceCompareTo(population.Row(place));
        if (compared < 0 || (compared == 0 && place == member))
        {
            population.Set(place, Decoder.Finishes, Decoder.End, row);
        }

        return compared < 0;
    }
}
