namespace EpisodePlanner.Planning;

/// <summary>A person comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record PersonChange(Id Id, Person? To) : ThingChange<Person>(Id, To)
{
    private protected override ThingKind<Person> Kind => ThingKinds.People;
}

/// <summary>A machine comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record MachineChange(Id Id, Machine? To) : ThingChange<Machine>(Id, To)
{
    private protected override ThingKind<Machine> Kind => ThingKinds.Machines;
}

/// <summary>A place comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record PlaceChange(Id Id, Place? To) : ThingChange<Place>(Id, To)
{
    private protected override ThingKind<Place> Kind => ThingKinds.Places;
}

/// <summary>A series, with its milestones, comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record SeriesChange(Id Id, Series? To) : ThingChange<Series>(Id, To)
{
    private protected override ThingKind<Series> Kind => ThingKinds.Series;
}

/// <summary>A task, with its stages, links and shots, comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record TaskChange(Id Id, WorkTask? To) : ThingChange<WorkTask>(Id, To)
{
    private protected override ThingKind<WorkTask> Kind => ThingKinds.Tasks;
}

/// <summary>An episode comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record EpisodeChange(Id Id, Episode? To) : ThingChange<Episode>(Id, To)
{
    private protected override ThingKind<Episode> Kind => ThingKinds.Episodes;
}

/// <summary>A slot rule comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record SlotRuleChange(Id Id, SlotRule? To) : ThingChange<SlotRule>(Id, To)
{
    private protected override ThingKind<SlotRule> Kind => ThingKinds.SlotRules;
}

/// <summary>An upload comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record UploadChange(Id Id, Upload? To) : ThingChange<Upload>(Id, To)
{
    private protected override ThingKind<Upload> Kind => ThingKinds.Uploads;
}

/// <summary>A log entry comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record LogChange(Id Id, LogEntry? To) : ThingChange<LogEntry>(Id, To)
{
    private protected override ThingKind<LogEntry> Kind => ThingKinds.Log;
}

/// <summary>A timed line comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record TimedLineChange(Id Id, TimedLine? To) : ThingChange<TimedLine>(Id, To)
{
    private protected override ThingKind<TimedLine> Kind => ThingKinds.TimedLines;
}

/// <summary>A booking comes, changes or goes.</summary>
/// <inheritdoc cref="ThingChange{T}" path="/param"/>
public sealed record BookingChange(Id Id, Booking? To) : ThingChange<Booking>(Id, To)
{
    private protected override ThingKind<Booking> Kind => ThingKinds.Bookings;
}
