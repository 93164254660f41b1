using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Lists;

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
    private const int SmallFirstStage = 5_000;
    private const int StageGrowth = 8;
    private const int LeastSize = 8;
    private const int GreatestSize = 2_000;

    /// <summary>A population of large problems may fill so many numbers.</summary>
    private const int GreatestArea = 1 << 23;

    /// <summary>So many lists are tried in search of one not met before; then what comes is decoded.</summary>
    private const int Tries = 20;

    /// <summary>After so many sweeps in which no member became better a population has nothing more to give.</summary>
    private const int MostIdleSweeps = 5;

    private readonly ListKernel kernel;
    private readonly WindowCrossover crossover;
    private readonly ListMutation mutation;
    private readonly SplitMix dice;
    private readonly Marks met = new(16);
    private readonly Shares shares = new();
    private readonly int[] keys;
    private readonly int firstStage;
    private int turn;

    public PopulationSearch(ListKernel kernel, WindowCrossover crossover, ListMutation mutation, SplitMix dice)
    {
        (this.kernel, this.crossover, this.mutation, this.dice) = (kernel, crossover, mutation, dice);
        keys = new int[kernel.Count];
        firstStage = kernel.FirstStage > 0 ? kernel.FirstStage : kernel.Budget <= OnePopulation ? kernel.Budget : SmallFirstStage;
    }

    private bool OnlyOne => kernel.FirstStage == 0 && kernel.Budget <= OnePopulation;

    /// <summary>Looks until the budget is used up, nothing can be better, or it is told to stop.</summary>
    public void Run()
    {
        var stage = firstStage;
        var population = NewPopulation(stage);
        kernel.MakeFirst(this, population);
        while (kernel.MayGoOn)
        {
            var begun = kernel.Generated;
            Fill(population);
            Evolve(population, kernel.Generated + (long)stage);
            if (kernel.Generated == begun)
            {
                // There is nothing left to try.
                return;
            }

            stage = OnlyOne ? stage : (int)Math.Min(int.MaxValue, (long)stage * StageGrowth);
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
        return new Population(Math.Clamp(size, LeastSize, most), keys.Length, kernel.Parts);
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

    private void Fill(Population population)
    {
        kernel.AimAtNothing();
        for (var tries = 0; tries < 2 * population.Capacity && !population.IsFull && kernel.MayGoOn; tries++)
        {
            kernel.Draw(keys);
            kernel.Prepare(keys);
            if (OnlyOne || met.Add(kernel.ListMark))
            {
                Take(population, Decode());
            }
        }
    }

    /// <summary>Whether the list prepared last was not met before; from now on it was.</summary>
    public bool IsNew() => met.Add(kernel.ListMark);

    /// <summary>Takes a new schedule in where there is room.</summary>
    public void Take(Population population, ListOutcome outcome)
    {
        if (outcome == ListOutcome.Fresh && !population.IsFull)
        {
            population.Add(kernel.Finishes, kernel.End, kernel.Row);
        }
    }

    /// <summary>The same; where there is no room it takes the place of the worst one that is not better.</summary>
    public void TakeBetter(Population population, ListOutcome outcome)
    {
        if (!population.IsFull)
        {
            Take(population, outcome);
        }
        else if (outcome == ListOutcome.Fresh)
        {
            Replaces(population, population.Worst);
        }
    }

    /// <summary>Decodes the list in both directions or, where justification may lose, forward alone every second time.</summary>
    private ListOutcome Decode()
    {
        turn ^= 1;
        return kernel.Justified > turn ? Justify() : DecodeForward(keys);
    }

    /// <summary>One schedule, in ascending order of keys.</summary>
    public ListOutcome DecodeForward(ReadOnlySpan<int> byKey) =>
        !kernel.TryForward(byKey) ? ListOutcome.Useless : met.Add(~kernel.ForwardMark) ? ListOutcome.Fresh : ListOutcome.Met;

    /// <summary>
    /// One or two schedules: the backward list prepared last and, where that is not hopeless, the forward list that follows from it.
    /// </summary>
    public ListOutcome Justify()
    {
        kernel.Backward();
        if (!met.Add(kernel.BackwardMark))
        {
            return ListOutcome.Met;
        }

        if (!kernel.MayGoOn || kernel.IsHopeless || !kernel.TryForwardAgain())
        {
            return ListOutcome.Useless;
        }

        return met.Add(~kernel.ForwardMark) ? ListOutcome.Fresh : ListOutcome.Met;
    }

    private void Evolve(Population population, long end)
    {
        var idle = 0;
        while (population.Count > 1 && kernel.MayGoOn && kernel.Generated < end && idle < MostIdleSweeps)
        {
            idle++;
            for (var member = 0; member < population.Count && kernel.MayGoOn; member++)
            {
                var isBetter = kernel.HasOwn && shares.IsForOwn(dice) ? TryOwn(population) : TryChild(population, member);
                idle = isBetter ? 0 : idle;
            }
        }
    }

    /// <summary>A list of the kernel's own making; whether a member gave way to a better one.</summary>
    private bool TryOwn(Population population)
    {
        var isNew = kernel.TryOwn(this) && met.Add(~kernel.ForwardMark);
        shares.Learn(ofOwn: true, isNew && kernel.IsBest);
        return isNew && Replaces(population, population.Worst);
    }

    /// <summary>A list by two parents; whether a member gave way to a better one.</summary>
    private bool TryChild(Population population, int member)
    {
        var outcome = ListOutcome.Met;
        if (TryPrepareChild(population, member) || OnlyOne)
        {
            kernel.Aim(population.Row(population.Worst), population.End(population.Worst));
            outcome = Decode();
        }

        mutation.Learn(wasMet: outcome == ListOutcome.Met);
        shares.Learn(ofOwn: false, outcome == ListOutcome.Fresh && kernel.IsBest);
        return outcome == ListOutcome.Fresh && Replaces(population, member);
    }

    /// <summary>A list by two parents; whether it was not met before. Where few are left, a budget is rather spent on one that was.</summary>
    private bool TryPrepareChild(Population population, int member)
    {
        for (var tries = 0; tries < Tries; tries++)
        {
            var other = Tournament(population, member);
            crossover.Write(population.Finishes(member), population.End(member), population.Finishes(other), population.End(other), keys);
            mutation.Move(keys);
            kernel.Prepare(keys);
            if (met.Add(kernel.ListMark))
            {
                return true;
            }

            mutation.Learn(wasMet: true);
        }

        return false;
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
        var row = kernel.Row;
        var place = row.SequenceCompareTo(population.Row(member)) <= 0 ? member : population.Worst;
        var compared = row.SequenceCompareTo(population.Row(place));
        if (compared < 0 || (compared == 0 && place == member))
        {
            population.Set(place, kernel.Finishes, kernel.End, row);
        }

        return compared < 0;
    }
}
