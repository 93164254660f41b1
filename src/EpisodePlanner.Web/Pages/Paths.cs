using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Pages;

/// <summary>Where the pages of a workshop are.</summary>
/// <param name="Workshop">The workshop's id.</param>
public sealed record Paths(Id Workshop)
{
    /// <summary>What is next.</summary>
    public string Now => $"/w/{Workshop}";

    /// <summary>The bench, day by day.</summary>
    public string Bench => $"{Now}/bench";

    /// <summary>The silences.</summary>
    public string Silence => $"{Now}/silence";

    /// <summary>What can be done about the silence of a series, or of the channel for an empty id.</summary>
    public string Remedies(Id series) => $"{Silence}/{(series.IsEmpty ? "channel" : $"of/{series}")}";

    /// <summary>What can be kept up over all series.</summary>
    public string Cadence => $"{Now}/cadence";

    /// <summary>The stories.</summary>
    public string Story => $"{Now}/story";

    /// <summary>Other ways to cut: of one series, or of all together where none is named.</summary>
    public string Cuts(Id? series) => series is { } one ? $"{Story}/cuts/{one}" : $"{Story}/cuts";

    /// <summary>Changes supposed beside the plan.</summary>
    public string Suppose => $"{Now}/suppose";

    /// <summary>What each series could publish now.</summary>
    public string PublishNow => $"{Story}/now";

    /// <summary>To rest or to finish a series.</summary>
    public string Rest(Id series) => $"{OfSeries(series)}/rest";

    /// <summary>The series with their work.</summary>
    public string Series => $"{Now}/series";

    /// <summary>People, machines and places.</summary>
    public string Stations => $"{Now}/stations";

    /// <summary>The letter to supporters.</summary>
    public string Letter => $"{Now}/letter";

    /// <summary>The history.</summary>
    public string Changes => $"{Now}/changes";

    /// <summary>The settings, slots, bookings and timed lines.</summary>
    public string Settings => $"{Now}/settings";

    /// <summary>One series with its work.</summary>
    public string OfSeries(Id series) => $"{Series}/{series}";

    /// <summary>The outline of an episode.</summary>
    public string Outline(Id episode) => $"{Now}/outline/{episode}";

    /// <summary>Why an episode goes out when it does.</summary>
    public string Why(Id episode) => $"{Now}/why/{episode}";

    /// <summary>The form of a thing.</summary>
    public string Edit(ThingKind kind, Id id) => $"{Now}/edit/{kind.Name}/{id}";

    /// <summary>The form of a new thing.</summary>
    public string New(ThingKind kind) => $"{Now}/new/{kind.Name}";

    /// <summary>The form of a stretch of work: its task, or the episode whose tail it is.</summary>
    public string Of(StageKey key) => key.IsTail ? Edit(ThingKinds.Episodes, key.Episode) : Edit(ThingKinds.Tasks, key.Task);
}

/// <summary>The pages of a workshop that stand in its menu, in the order in which their questions come up.</summary>
public enum DeskPage
{
    /// <summary>What is next.</summary>
    Now,

    /// <summary>The bench, day by day.</summary>
    Bench,

    /// <summary>The silences.</summary>
    Silence,

    /// <summary>The stories.</summary>
    Story,

    /// <summary>Changes supposed beside the plan.</summary>
    Suppose,

    /// <summary>The series with their work.</summary>
    Series,

    /// <summary>People, machines and places.</summary>
    Stations,

    /// <summary>The letter to supporters.</summary>
    Letter,

    /// <summary>The history.</summary>
    WhatChanged,

    /// <summary>The settings.</summary>
    Settings,
}
