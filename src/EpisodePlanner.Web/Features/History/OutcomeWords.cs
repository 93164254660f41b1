using EpisodePlanner.Data;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.History;

/// <summary>Why something was not done, for people.</summary>
internal static class OutcomeWords
{
    /// <summary>A sentence or two about an outcome that is not the one hoped for.</summary>
    public static string Of(EditOutcome outcome) => outcome switch
    {
        Broken broken => string.Join(' ', broken.Reasons.Select(reason => reason.Says)),
        Stale { Things.Count: > 0 } stale =>
            $"{string.Join(", ", stale.Things.Select(thing => Name(stale.Now.Workshop, thing.What)))} changed since; undo that first, or change it by hand.",
        Stale => "The workshop changed meanwhile; look at it again.",
        NothingThere nothing => nothing.Says,
        NoWorkshop => "The workshop was deleted meanwhile.",
        _ => "That could not be done.",
    };

    /// <summary>A thing by its name: task “weld frame”.</summary>
    public static string Name(Workshop workshop, Aggregate what) => ThingKinds.Find(what.Kind) is not { } kind ? what.Kind
        : kind.Find(workshop, what.Id) is { } thing ? $"{kind.Word} \u201c{ThingNames.Of(thing)}\u201d"
        : $"{kind.Word} '{what.Id}'";
}
