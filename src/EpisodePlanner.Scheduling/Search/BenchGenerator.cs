using EpisodePlanner.Scheduling.Engine;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling;

/// <summary>
/// Serial generation of bench schedules by hand: makes one schedule after the other. Not safe for use by several threads at
/// once.
/// </summary>
public sealed class BenchGenerator
{
    private readonly CompiledProblem compiled;
    private readonly SerialGenerator generator;
    private readonly int[] keys;
    private readonly int[] noDeadlines;

    /// <summary>A generator with no schedule yet.</summary>
    public BenchGenerator(WorkshopNetwork network)
    {
        compiled = network.Passes.Compiled;
        generator = new SerialGenerator(compiled, network.Passes.Unkept);
        keys = new int[compiled.ItemCount];
        noDeadlines = BenchDeadlines.None(compiled.StageCount);
    }

    /// <summary>When the stages of the last schedule start, minutes; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Starts => generator.Starts;

    /// <summary>When they are finished, minutes; −1 where unplaced.</summary>
    public ReadOnlySpan<int> Finishes => generator.Finishes;

    /// <summary>
    /// Gives each stage, in the order of a list as far as links let it, the earliest moment that is left; the unload of a
    /// run goes as its load does.
    /// </summary>
    /// <param name="order">Every stage once.</param>
    /// <returns>How many schedules were made: more than one where greatest lags asked for it.</returns>
    /// <exception cref="ArgumentException">The list has another length.</exception>
    public int Generate(ReadOnlySpan<int> order)
    {
        if (order.Length != compiled.StageCount)
        {
            throw new ArgumentException($"A list of {order.Length} for {compiled.StageCount} stages.", nameof(order));
        }

        for (var place = 0; place < order.Length; place++)
        {
            keys[order[place]] = place;
            if (compiled.UnloadItem[order[place]] is >= 0 and var unload)
            {
                keys[unload] = place;
            }
        }

        generator.TryGenerate(keys, noDeadlines, out var made);
        return made;
    }

    /// <summary>The last schedule.</summary>
    public BenchSchedule ToSchedule() => generator.ToSchedule();
}
