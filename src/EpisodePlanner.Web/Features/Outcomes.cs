using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;
using EpisodePlanner.Web.Serving.Answers;
using EpisodePlanner.Web.Serving.ConditionalRequests;

namespace EpisodePlanner.Web.Features;

/// <summary>Says why the store did not make a change.</summary>
internal static class Outcomes
{
    /// <summary>The refusal for an outcome that is not the one hoped for.</summary>
    /// <param name="outcome">The outcome.</param>
    /// <param name="workshop">The workshop.</param>
    /// <param name="yours">What the client expected.</param>
    /// <param name="what">What the request is about; null for the whole workshop.</param>
    public static Problem Refuse(EditOutcome outcome, Id workshop, EntityTags? yours = null, Aggregate? what = null) => outcome switch
    {
        Broken broken => Problems.Broken(broken.Reasons),
        Stale stale => Refusals.Stale(yours, what is { } one ? Guards.TagOf(stale.Now, one) : EntityTags.Of(stale.Now.Version), Lines(stale)),
        NoWorkshop gone => Refusals.NoWorkshop(workshop.ToString(), gone.DeletedAt),
        KeyReused => Problems.KeyReused(),
        NothingThere nothing => Problems.Conflict(nothing.Says),
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome that is no refusal."),
    };

    private static ValueList<ProblemThing>? Lines(Stale stale) => stale.Things.Count == 0 ? null : stale.Things
        .Select(thing => new ProblemThing(
            thing.What.Kind, $"{thing.What.Id}", thing.Version is { } version ? EntityTags.Of(version).Tag.ToString() : null))
        .ToValueList();
}
