using System.Globalization;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using Microsoft.Net.Http.Headers;
using NodaTime;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Everything a served plan depends on; the same key means the same bytes.</summary>
/// <param name="Workshop">The workshop.</param>
/// <param name="Version">Its version.</param>
/// <param name="PlannedAt">The moment of planning, whole minutes.</param>
/// <param name="Schedules">How many schedules may be made, 1 or more.</param>
internal sealed record PlanKey(Id Workshop, long Version, Instant PlannedAt, int Schedules)
{
    /// <summary>How many schedules are made where nobody says.</summary>
    public const int UsualSchedules = 12;

    /// <summary>The seed of every served plan.</summary>
    public const ulong Seed = 1;

    /// <summary>The draft that is planned in place of the workshop; empty for the workshop itself.</summary>
    public Id Suppose { get; init; }

    /// <summary>The draft's version.</summary>
    public long SupposeVersion { get; init; }

    /// <summary>The key of a workshop's plan.</summary>
    public static PlanKey Of(Snapshot now, int schedules = UsualSchedules) => new(now.Id, now.Version, now.PlannedAt, schedules);

    /// <summary>The tag of the plan as a query asks for it.</summary>
    public EntityTagHeaderValue TagFor(PlanQuery query) => TagWith(query.Trials ? "" : ".dates");

    /// <summary>
    /// The tag of something that is written from the plan: version, minute, schedules where they are not the usual ones,
    /// the draft's version, and the form.
    /// </summary>
    /// <param name="form">Tells its form from others: ".html".</param>
    public EntityTagHeaderValue TagWith(string form)
    {
        var schedules = Schedules == UsualSchedules ? "" : string.Create(CultureInfo.InvariantCulture, $".{Schedules}");
        var draft = SupposeVersion == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"s{SupposeVersion}.");
        return new(string.Create(
            CultureInfo.InvariantCulture, $"\"{draft}{Version}.{PlannedAt.ToUnixTimeSeconds() / 60}{schedules}{form}\""));
    }
}
