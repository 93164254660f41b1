namespace EpisodePlanner.Planning;

/// <summary>Another name for the workshop.</summary>
/// <param name="To">The new name.</param>
public sealed record NameChange(string To) : Change
{
    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => [Aggregate.About];

    internal override Step Take(Workshop workshop, ReasonList reasons) =>
        new(workshop with { Name = To }, new NameChange(workshop.Name));
}

/// <summary>Another time zone for the workshop; local times stay as they are written.</summary>
/// <param name="To">The new IANA zone.</param>
public sealed record ZoneChange(string To) : Change
{
    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => [Aggregate.About];

    internal override Step Take(Workshop workshop, ReasonList reasons) =>
        new(workshop with { Zone = To }, new ZoneChange(workshop.Zone));
}

/// <summary>Other settings, all at once.</summary>
/// <param name="To">The new settings.</param>
public sealed record SettingsChange(Settings To) : Change
{
    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => [Aggregate.Settings];

    internal override Step Take(Workshop workshop, ReasonList reasons) =>
        new(workshop with { Settings = To }, new SettingsChange(workshop.Settings));
}

/// <summary>The maker accepts a plan, or lets go of it.</summary>
/// <param name="To">The accepted plan; null where none is accepted any more.</param>
public sealed record AcceptedPlanChange(AcceptedPlan? To) : Change
{
    /// <inheritdoc/>
    public override IEnumerable<Aggregate> Touches() => [Aggregate.Accepted];

    internal override Step Take(Workshop workshop, ReasonList reasons) =>
        new(workshop with { Accepted = To }, new AcceptedPlanChange(workshop.Accepted));
}
