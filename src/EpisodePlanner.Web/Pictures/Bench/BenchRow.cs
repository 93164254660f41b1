using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Pictures;

/// <summary>What a bar on the bench shows.</summary>
public enum BarKind
{
    /// <summary>Hands at work.</summary>
    Hands,

    /// <summary>A machine runs.</summary>
    Run,

    /// <summary>A machine has stopped and is still taken: nobody has unloaded it.</summary>
    Held,

    /// <summary>Time that must pass.</summary>
    Wait,
}

/// <summary>A bar in one row of the bench.</summary>
/// <param name="Stage">The stretch of work.</param>
/// <param name="Kind">What happens.</param>
/// <param name="From">Its begin, minutes of wall-clock time after the row's noon, 0 to 1440.</param>
/// <param name="To">Its end, in the same minutes.</param>
public sealed record Bar(PlannedStage Stage, BarKind Kind, int From, int To);

/// <summary>The bars of one person, machine or wait in a row.</summary>
/// <param name="Name">Whose.</param>
/// <param name="Bars">The bars by their begin.</param>
public sealed record Lane(string Name, ValueList<Bar> Bars);

/// <summary>One row of the bench: a day from noon to the next noon.</summary>
public sealed record BenchRow
{
    /// <summary>The day at whose noon it begins.</summary>
    public required LocalDate Day { get; init; }

    /// <summary>A lane for each person.</summary>
    public required ValueList<Lane> Hands { get; init; }

    /// <summary>A lane for each machine that does something, then waits.</summary>
    public required ValueList<Lane> Machines { get; init; }

    /// <summary>When somebody is there, minutes after noon.</summary>
    public required ValueList<(int From, int To)> Open { get; init; }
}
