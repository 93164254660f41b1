using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Lists;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling;

/// <summary>
/// Makes bench schedules from lists, counts each and keeps the best. Begins with an accepted order, orders of targets and
/// rules of priority; then small moves of the best order of targets go along with whatever lists a search makes.
/// </summary>
/// <remarks>Allocates nothing once it is made, but for a better schedule.</remarks>
internal sealed class BenchKernel : ListKernel
{
    /// <summary>
    /// So many moves of targets, and more for each of these, are tried before lists are mixed: they are the quickest to win
    /// something, and the more targets there are the longer.
    /// </summary>
    private const int FirstMoves = 20;
    private const int FirstMovesEach = 8;

    /// <summary>So many orders are tried in search of one not met before.</summary>
    private const int Tries = 20;

    private readonly BenchCount count;
    private readonly BenchBest best;
    private readonly TargetWalk walk;
    private readonly ListSamples samples;
    private readonly SerialGenerator generator;
    private readonly IScheduleObjective objective;
    private readonly BenchDeadlines deadlines;
    private readonly KeySorter sorter;
    private readonly IReadOnlyList<(string Rule, int[] Keys)> rules;
    private readonly int[]? accepted;
    private readonly int[] order;
    private readonly int[] keys;
    private readonly int[] done;
    private readonly long[] row;
    private string rule = "";
    private int end;

    public BenchKernel(
        WorkshopNetwork network, IScheduleObjective objective, BenchCount count, ulong seed, IReadOnlyList<int>? acceptedOrder, SplitMix dice)
    {
        var compiled = network.Passes.Compiled;
        (this.objective, this.count) = (objective, count);
        generator = new SerialGenerator(compiled, network.Passes.Unkept);
        deadlines = new BenchDeadlines(compiled, objective);
        Count = compiled.ItemCount;
        sorter = new KeySorter(Count);
        (order, keys, done, row) = (new int[Count], new int[Count], new int[Count], new long[1 + objective.Parts]);
        best = new BenchBest(Count, row.Length);
        var late = network.Passes.Late([.. network.Problem.Stages.Select(stage => Math.Min(stage.Due, network.Problem.Horizon))]).Start;
        accepted = acceptedOrder is { Count: > 0 } ? PriorityRules.Accepted(compiled, acceptedOrder) : null;
        rules = [.. PriorityRules.All(network, late)];
        walk = new TargetWalk(new Targets(compiled, late), row.Length, seed);
        samples = new ListSamples(rules[0].Keys, dice);
    }

    public override int Count { get; }

    public override int Budget => count.Budget;

    public override int Generated => count.Generated;

    public override bool MayGoOn => count.MayGoOn;

    public override int Parts => row.Length;

    public override ReadOnlySpan<long> Row => row;

    public override bool IsBest => best.IsLast;

    public override bool HasOwn => true;

    public override int Justified => 0;

    public override int FirstStage => 600;

    public override ReadOnlySpan<int> Finishes => done;

    public override int End => end;

    public override ulong ListMark => Marks.Of(order);

    public override ulong ForwardMark => Marks.Of(done);

    public override ulong BackwardMark => 0;

    /// <summary>The best schedule.</summary>
    public SearchResult ToResult()
    {
        // The best list once more gives the best schedule, so that none has to be kept while looking.
        generator.TryGenerate(best.Keys, BenchDeadlines.None(generator.Finishes.Length), out _);
        return new SearchResult(generator.ToSchedule(), [.. best.Row[1..]], best.Rule, Generated);
    }

    public override void MakeFirst(PopulationSearch search, Population population)
    {
        if (accepted is not null)
        {
            Make(search, population, "the accepted order", accepted);
        }

        foreach (var firmFirst in (ReadOnlySpan<bool>)[false, true])
        {
            walk.WriteFirst(firmFirst, keys);
            walk.Begin(firmFirst, Make(search, population, TargetWalk.Rule, keys), row);
        }

        foreach (var (name, byRule) in rules)
        {
            Make(search, population, name, byRule);
        }

        for (var moves = 0; moves < FirstMoves + (FirstMovesEach * walk.Count) && MayGoOn; moves++)
        {
            search.TakeBetter(population, TryOwn(search) ? ListOutcome.Fresh : ListOutcome.Useless);
        }
    }

    private bool Make(PopulationSearch search, Population population, string by, int[] byKey)
    {
        if (!MayGoOn)
        {
            return false;
        }

        Prepare(byKey);
        if (!search.IsNew())
        {
            return false;
        }

        rule = by;
        search.Take(population, search.DecodeForward(byKey));
        return true;
    }

    public override void Prepare(ReadOnlySpan<int> byKey) => sorter.Sort(byKey, order);

    public override bool TryForward(ReadOnlySpan<int> byKey)
    {
        var isComplete = generator.TryGenerate(byKey, deadlines.Latest, out var made);
        count.Add(made);
        best.IsLast = false;
        if (isComplete)
        {
            // What leaves less work without a moment is better, whatever the objective says.
            row[0] = generator.Finishes.Count(-1);
            objective.Evaluate(generator.Starts, generator.Finishes, row.AsSpan(1));
            best.Offer(row, byKey, rule);
            generator.WriteItems(done);
            end = LastFinish();
        }

        rule = "a mixture of good orders";
        return isComplete;
    }

    private int LastFinish()
    {
        var last = 0;
        foreach (var finish in generator.Finishes)
        {
            last = Math.Max(last, finish);
        }

        return last;
    }

    public override void Backward() => throw new NotSupportedException("Bench schedules are made forward only.");

    public override bool TryForwardAgain() => throw new NotSupportedException("Bench schedules are made forward only.");

    public override bool IsHopeless => false;

    public override void Aim(ReadOnlySpan<long> bar, int atEnd) => deadlines.Set(bar);

    public override void AimAtNothing() => deadlines.Clear();

    public override void Draw(Span<int> drawn) => samples.Draw(drawn);

    public override bool TryOwn(PopulationSearch search)
    {
        for (var tries = 0; tries < Tries && walk.TryNext(keys); tries++)
        {
            Prepare(keys);
            if (search.IsNew())
            {
                deadlines.Set(walk.Row);
                rule = TargetWalk.Rule;
                return TryForward(keys) && walk.Judge(row);
            }
        }

        return false;
    }
}
