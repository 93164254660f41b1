using EpisodePlanner.Data.Rows;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace EpisodePlanner.Data.Writing;

/// <summary>Knows requests again by their keys.</summary>
internal static class RequestKeys
{
    /// <summary>How long a key is known.</summary>
    public static Duration Kept { get; } = Duration.FromDays(1);

    /// <summary>The scope of requests that make workshops; no workshop has such an id.</summary>
    public const string NewWorkshops = "*";

    /// <summary>What became of an earlier request with this key, or null.</summary>
    public static async Task<RequestKeyRow?> Find(
        PlannerContext context, string scope, RequestKey? key, CancellationToken stop) => key is null
        ? null
        : await context.RequestKeys.AsNoTracking()
            .SingleOrDefaultAsync(row => row.Scope == scope && row.Key == key.Key, stop);

    /// <summary>The row by which a repetition will be known.</summary>
    public static RequestKeyRow Row(
        this RequestKey key, string scope, Instant at, string workshop, long? version, string? suppose = null) => new()
        {
            Scope = scope,
            Key = key.Key,
            Fingerprint = key.Fingerprint,
            At = at,
            Workshop = workshop,
            Version = version,
            Suppose = suppose,
        };
}
