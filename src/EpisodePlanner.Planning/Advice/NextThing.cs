using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>The one thing that hands can do now, or next.</summary>
/// <param name="Stage">The stretch of work.</param>
/// <param name="Part">What of it: a sitting of work, a load or an unload.</param>
public sealed record NextThing(PlannedStage Stage, PlannedPart Part)
{
    /// <summary>
    /// The first sitting, load or unload of a plan; of several at one moment a load before an unload before work, because
    /// a machine that runs works by itself. Null where no hands are needed any more.
    /// </summary>
    public static NextThing? Of(Plan plan) => plan.Stages
        .SelectMany(stage => stage.Parts.Where(part => TakesHands(stage, part)), (stage, part) => new NextThing(stage, part))
        .OrderBy(thing => thing.Part.Start)
        .ThenBy(thing => Rank(thing.Part.Kind))
        .ThenBy(thing => thing.Stage.Index)
        .FirstOrDefault();

    /// <summary>A run that goes on is loaded already.</summary>
    private static bool TakesHands(PlannedStage stage, PlannedPart part) => part.Kind switch
    {
        PartKind.Work => part.End > part.Start,
        PartKind.Load => !stage.Begun,
        PartKind.Unload => true,
        _ => false,
    };

    private static int Rank(PartKind kind) => kind switch
    {
        PartKind.Load => 0,
        PartKind.Unload => 1,
        _ => 2,
    };
}
