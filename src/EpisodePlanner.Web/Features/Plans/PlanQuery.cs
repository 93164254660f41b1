using System.ComponentModel.DataAnnotations;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>What a plan can be asked.</summary>
internal sealed record PlanQuery
{
    /// <summary>How many schedules may be made in search of a better one; 12 where absent.</summary>
    [Range(1, 200)]
    public int Schedules { get; init; } = PlanKey.UsualSchedules;

    /// <summary>
    /// Whether the planner also plans again for each run that starts tonight and for each thing that was assumed, to say
    /// what they move. Without that "tonight" and "assumed" are empty, and the plan of a large workshop comes sooner.
    /// </summary>
    public bool Trials { get; init; } = true;
}
