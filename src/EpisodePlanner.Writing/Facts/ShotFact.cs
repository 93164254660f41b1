using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>How a shot stands, by its own state, the log and the plan.</summary>
internal enum ShotStanding
{
    /// <summary>Taken.</summary>
    Got,

    /// <summary>Its moment is to come or lasts.</summary>
    ToFilm,

    /// <summary>Its moment has passed; it can be taken again.</summary>
    Again,

    /// <summary>It can't be taken any more.</summary>
    Lost,
}

/// <summary>What ends the time in which a shot can be taken.</summary>
/// <param name="Name">What happens: the name of a task or of a part of the tail.</param>
/// <param name="Finish">Whether its finish counts; else its start.</param>
/// <param name="Planned">The planned stage that decides the moment, or null.</param>
/// <param name="Happened">The log entry by which it has happened, or null.</param>
internal sealed record ShotEnd(string Name, bool Finish, PlannedStage? Planned, LogEntry? Happened)
{
    public Instant? At => Finish ? Planned?.Finish : Planned?.Start;
}

/// <summary>A shot with when it can be taken.</summary>
/// <param name="Task">Its task.</param>
/// <param name="Shot">The shot.</param>
/// <param name="Standing">How it stands.</param>
/// <param name="From">The planned stage whose start (during) or finish (after) opens its time; null where it is open.</param>
/// <param name="End">What ends its time; null where nothing is known to.</param>
internal sealed record ShotFact(WorkTask Task, Shot Shot, ShotStanding Standing, PlannedStage? From, ShotEnd? End)
{
    public Fact Fact => Fact.Of(Task, Shot);
}
