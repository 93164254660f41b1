using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>What a plan can be asked.</summary>
internal sealed record PlanQuery
{
    /// <summary>How many schedules may be made in search of a better one; 12 where absent.</summary>
    [Range(1, 200)]
    public int Schedules { get; init; } = PlanKey.UsualSchedules;
}
