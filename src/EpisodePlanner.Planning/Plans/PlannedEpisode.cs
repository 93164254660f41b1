using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>An episode to come.</summary>
public sealed record PlannedEpisode
{
    private readonly Lazy<ValueList<ChainLink>> chain = new([]);

    /// <summary>Its id; for an assumed episode one that no other thing has.</summary>
    public required Id Id { get; init; }

    /// <summary>Its working title.</summary>
    public required string Title { get; init; }

    /// <summary>Its series.</summary>
    public required Id Series { get; init; }

    /// <summary>Nobody has cut it: it holds whatever of its series is in no episode yet.</summary>
    public required bool Assumed { get; init; }

    /// <summary>The milestones it shows, in story order.</summary>
    public required ValueList<Id> Milestones { get; init; }

    /// <summary>When its tail is done, or null where it has no date.</summary>
    public required Instant? Ready { get; init; }

    /// <summary>The window in which it goes out, or null.</summary>
    public required SlotWindow? Slot { get; init; }

    /// <summary>The public moment, or null.</summary>
    public required Instant? Publish { get; init; }

    /// <summary>The date of the public moment, by which silence counts, or null.</summary>
    public required LocalDate? Date { get; init; }

    /// <summary>Minutes of work left for it, tail included, hands and tail only; other episodes' work not counted.</summary>
    public required int WorkMinutes { get; init; }

    /// <summary>
    /// Why its date is what it is: from the tail back to what no other stage decides. Found when it is first asked for.
    /// </summary>
    public ValueList<ChainLink> Chain
    {
        get => chain.Value;
        init => chain = new Lazy<ValueList<ChainLink>>(value);
    }

    internal Func<ValueList<ChainLink>> ChainLater
    {
        init => chain = new Lazy<ValueList<ChainLink>>(value);
    }
}

/// <summary>One step of the chain that decides a date.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Name">The stage in words.</param>
/// <param name="Start">When it starts.</param>
/// <param name="Finish">When it is finished.</param>
/// <param name="Cause">Why it does not start earlier.</param>
public sealed record ChainLink(StageKey Stage, string Name, Instant Start, Instant Finish, PlannedCause Cause);

/// <summary>The silences of a series or of the channel, so far and to come.</summary>
public sealed record Outlook
{
    /// <summary>The series; empty for the channel.</summary>
    public required Id Series { get; init; }

    /// <summary>Its name; "the channel".</summary>
    public required string Name { get; init; }

    /// <summary>What it does now.</summary>
    public required SeriesState State { get; init; }

    /// <summary>Its promise.</summary>
    public required Promise Promise { get; init; }

    /// <summary>Whether the promise was assumed.</summary>
    public required bool PromiseAssumed { get; init; }

    /// <summary>The last upload made, or null.</summary>
    public required LocalDate? LastUpload { get; init; }

    /// <summary>Days since the last upload, or null.</summary>
    public required int? DaysSilent { get; init; }

    /// <summary>The last day on which an upload keeps the promise, or null where nothing is out or it rests.</summary>
    public required LocalDate? DueBy { get; init; }

    /// <summary>The silences so far.</summary>
    public required ValueList<Silence> Past { get; init; }

    /// <summary>The silences to come, the one going on included; the last is open.</summary>
    public required ValueList<Silence> Forecast { get; init; }

    /// <summary>Where a silence to come goes beyond the promise and an upload ends it, and the one going on.</summary>
    public required ValueList<SilenceAhead> Alarms { get; init; }

    /// <summary>Days beyond the promise of the worst of <see cref="Alarms"/>; 0 where the promise holds.</summary>
    public int WorstOver => Alarms.Select(alarm => alarm.DaysOver).DefaultIfEmpty(0).Max();

    /// <summary>After this upload nothing is planned; null where nothing is planned at all.</summary>
    public required LocalDate? LastPlanned { get; init; }
}

/// <summary>A silence beyond its promise.</summary>
/// <param name="Due">The last day within the promise.</param>
/// <param name="Ends">The day of the upload that ends it; null where none is planned.</param>
/// <param name="DaysOver">Days beyond the promise, up to that upload, or up to the horizon.</param>
/// <param name="Episode">The episode that ends it, or null.</param>
public sealed record SilenceAhead(LocalDate Due, LocalDate? Ends, int DaysOver, Id? Episode);
