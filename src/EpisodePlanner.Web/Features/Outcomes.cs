using System.Text.Json.Nodes;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving;
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
    public static Refusal Refuse(EditOutcome outcome, Id workshop, EntityTags? yours = null, Aggregate? what = null) => outcome switch
    {
        Broken broken => Refusals.Broken(broken.Reasons),
        Stale stale => Refusals.Stale(yours, what is { } one ? Guards.TagOf(stale.Now, one) : EntityTags.Of(stale.Now.Version), Lines(stale)),
        NoWorkshop gone => Refusals.NoWorkshop(workshop.ToString(), gone.DeletedAt),
        KeyReused => Refusals.KeyReused(),
        NothingThere nothing => Refusals.NothingToDo(nothing.Says),
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome that is no refusal."),
    };

    private static JsonArray Lines(Stale stale) => new([.. stale.Things.Select(thing => new JsonObject
    {
        ["kind"] = thing.What.Kind,
        ["id"] = thing.What.Id.ToString(),
        ["current"] = thing.Version is { } version ? EntityTags.Of(version).Tag.ToString() : null,
    })]);
}
