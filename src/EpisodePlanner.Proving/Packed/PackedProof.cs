using EpisodePlanner.Scheduling.Packed;

namespace EpisodePlanner.Proving.Packed;

/// <summary>What is certain about the end of a plain problem.</summary>
/// <param name="Schedule">The schedule with the least end that is known.</param>
/// <param name="Bound">No schedule ends earlier, in the unit of the durations.</param>
public sealed record PackedProof(PackedSchedule Schedule, int Bound)
{
    /// <summary>Whether the schedule is proved to be as short as any.</summary>
    public bool IsOptimal => Bound == Schedule.End;
}
