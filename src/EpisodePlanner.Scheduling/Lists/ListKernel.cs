namespace EpisodePlanner.Scheduling.Lists;

/// <summary>
/// What a population search needs to know of a kernel: it makes schedules from lists, given as keys by item (lower goes
/// first), counts each and keeps the best.
/// </summary>
internal abstract class ListKernel
{
    /// <summary>How many items a list has.</summary>
    public abstract int Count { get; }

    /// <summary>How many schedules may be made.</summary>
    public abstract int Budget { get; }

    /// <summary>How many were.</summary>
    public abstract int Generated { get; }

    /// <summary>Whether another schedule may be made.</summary>
    public abstract bool MayGoOn { get; }

    /// <summary>How many integers a row has.</summary>
    public abstract int Parts { get; }

    /// <summary>The row of the last complete schedule.</summary>
    public abstract ReadOnlySpan<long> Row { get; }

    /// <summary>Whether the last schedule is better than all before it.</summary>
    public abstract bool IsBest { get; }

    /// <summary>Whether the kernel has lists of its own to try.</summary>
    public abstract bool HasOwn { get; }

    /// <summary>How often in two a list is decoded backward and then forward: 0, 1 or 2 times.</summary>
    public abstract int Justified { get; }

    /// <summary>
    /// For how many schedules the first population is made, each further one for several times as many; 0 where one
    /// population is made for the whole budget.
    /// </summary>
    public abstract int FirstStage { get; }

    /// <summary>When the items of the last schedule are finished.</summary>
    public abstract ReadOnlySpan<int> Finishes { get; }

    /// <summary>Its end.</summary>
    public abstract int End { get; }

    /// <summary>A number that tells the list prepared last from others.</summary>
    public abstract ulong ListMark { get; }

    /// <summary>A number that tells the last forward schedule from others.</summary>
    public abstract ulong ForwardMark { get; }

    /// <summary>A number that tells the last backward schedule from others.</summary>
    public abstract ulong BackwardMark { get; }

    /// <summary>Makes the schedules with which every search begins and gives each to a population.</summary>
    public abstract void MakeFirst(PopulationSearch search, Population population);

    /// <summary>Makes the list of some keys.</summary>
    public abstract void Prepare(ReadOnlySpan<int> keys);

    /// <summary>Decodes in ascending order of keys; false where the schedule is of no interest.</summary>
    public abstract bool TryForward(ReadOnlySpan<int> keys);

    /// <summary>Decodes the list prepared last from its end.</summary>
    public abstract void Backward();

    /// <summary>Decodes forward in the order of the last backward schedule; false where the schedule is of no interest.</summary>
    public abstract bool TryForwardAgain();

    /// <summary>Whether the last backward schedule is so long that going forward again would hardly bring it to what is aimed at.</summary>
    public abstract bool IsHopeless { get; }

    /// <summary>Schedules with a greater row than this are of no interest.</summary>
    /// <param name="row">The row.</param>
    /// <param name="end">The end of the schedule that has it.</param>
    public abstract void Aim(ReadOnlySpan<long> row, int end);

    /// <summary>Every schedule is of interest.</summary>
    public abstract void AimAtNothing();

    /// <summary>Draws a list.</summary>
    public abstract void Draw(Span<int> keys);

    /// <summary>Tries a list of the kernel's own making that was not met before, where it has one.</summary>
    /// <returns>Whether a complete schedule came of it.</returns>
    public abstract bool TryOwn(PopulationSearch search);
}
