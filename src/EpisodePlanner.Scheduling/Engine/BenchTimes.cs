namespace EpisodePlanner.Scheduling.Engine;

/// <summary>When the stages of a schedule start and are finished while it is made, and how many each still waits for.</summary>
internal sealed class BenchTimes(int stages)
{
    /// <summary>By stage; −1 where it is not placed.</summary>
    public int[] Starts { get; } = new int[stages];

    /// <summary>By stage; −1 where it is not finished.</summary>
    public int[] Finishes { get; } = new int[stages];

    /// <summary>By stage: how many links lead from stages that are not finished.</summary>
    public int[] WaitingFor { get; } = new int[stages];

    /// <summary>Nothing placed.</summary>
    public void Reset(int[] waitingFor)
    {
        Starts.AsSpan().Fill(-1);
        Finishes.AsSpan().Fill(-1);
        waitingFor.CopyTo(WaitingFor, 0);
    }
}
