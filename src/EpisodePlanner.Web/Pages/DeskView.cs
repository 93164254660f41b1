using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Pages;

/// <summary>What every page of a workshop shows from: the workshop at a version, and its plan.</summary>
/// <param name="Id">The workshop's id.</param>
/// <param name="Version">Its version.</param>
/// <param name="Advice">The plan and what follows from it.</param>
public sealed record DeskView(Id Id, long Version, PlanAdvice Advice)
{
    /// <summary>Where its pages are.</summary>
    public Paths Paths { get; } = new(Id);

    /// <summary>The plan.</summary>
    public Plan Plan => Advice.Plan;

    /// <summary>The workshop.</summary>
    public Workshop Workshop => Advice.Plan.Request.Workshop;

    /// <summary>What was just done, to be said and to be undone.</summary>
    public HistoryLine? Done { get; init; }

    /// <summary>Whether what was just tapped could not be noted.</summary>
    public bool IsUnnoted { get; init; }
}
