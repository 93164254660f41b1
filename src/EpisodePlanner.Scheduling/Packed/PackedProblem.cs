using System.Collections.Immutable;
using EpisodePlanner.Scheduling.Networks;

namespace EpisodePlanner.Scheduling.Packed;

/// <summary>Several equal stations that are open at all times: so many units of one kind.</summary>
/// <param name="Name">Its name, for reasons.</param>
/// <param name="Capacity">How many units there are, 1 or more.</param>
public sealed record PackedStation(string Name, int Capacity);

/// <summary>The parts of a <see cref="PackedProblem"/>, not yet looked at.</summary>
public sealed record PackedInput
{
    /// <summary>Activities and links; only plain links (<see cref="LinkKind.After"/>) with lags of 0 or more are allowed.</summary>
    public required ActivityNetwork Network { get; init; }

    /// <summary>The stations.</summary>
    public IReadOnlyList<PackedStation> Stations { get; init; } = [];

    /// <summary>By activity: units taken from each station while it lasts, 0 to the station's capacity.</summary>
    public required IReadOnlyList<IReadOnlyList<int>> Demands { get; init; }
}

/// <summary>
/// A plain scheduling problem: activities that last for some whole time without a pause, need some units of stations
/// that never close, and wait for each other with least lags. Immutable and sound. In the literature this is the
/// resource-constrained project scheduling problem.
/// </summary>
/// <remarks>
/// The unit of time is the caller's. An activity of no duration takes nothing, whatever it demands. P. Brucker et al.,
/// "Resource-constrained project scheduling: notation, classification, models, and methods", EJOR 112 (1999).
/// </remarks>
public sealed class PackedProblem
{
    /// <summary>The most that all durations and lags together may add up to; no date of any schedule made here is later.</summary>
    public const int LargestHorizon = 1 << 28;

    internal PackedProblem(PackedInput input, int horizon)
    {
        Network = input.Network;
        Stations = [.. input.Stations];
        Demands = [.. input.Demands.Select(row => row.ToImmutableArray())];
        Horizon = horizon;
    }

    /// <summary>Activities, durations and links.</summary>
    public ActivityNetwork Network { get; }

    /// <summary>The stations.</summary>
    public ImmutableArray<PackedStation> Stations { get; }

    /// <summary>By activity, by station: units taken.</summary>
    public ImmutableArray<ImmutableArray<int>> Demands { get; }

    /// <summary>The sum of all durations and lags.</summary>
    public int Horizon { get; }

    /// <summary>How many activities there are.</summary>
    public int Count => Network.Activities.Length;

    /// <summary>A sound problem, or every reason why the input is none.</summary>
    public static PackedProblemResult Create(PackedInput input)
    {
        var reasons = PackedRules.Check(input, out var horizon);
        return reasons.Count > 0
            ? new PackedProblemResult.Refused(reasons)
            : new PackedProblemResult.Sound(new PackedProblem(input, horizon));
    }
}

/// <summary>What came of making a problem.</summary>
public abstract record PackedProblemResult
{
    private PackedProblemResult()
    {
    }

    /// <summary>The problem is sound.</summary>
    public sealed record Sound(PackedProblem Problem) : PackedProblemResult;

    /// <summary>The input is no problem, for these reasons, a sentence each.</summary>
    public sealed record Refused(IReadOnlyList<string> Reasons) : PackedProblemResult;
}
