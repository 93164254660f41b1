using EpisodePlanner.Planning;

namespace EpisodePlanner.Writing;

/// <summary>The parts of an episode's tail in words.</summary>
internal static class TailWords
{
    public const string Whole = "the work on the footage";

    public static string Of(TailKind? part) => part switch
    {
        TailKind.TalkToCamera => "talking to camera",
        TailKind.PickUps => "pick-ups",
        TailKind.EditPass => "an edit pass",
        TailKind.Captions => "captions",
        TailKind.CoverPicture => "the cover picture",
        TailKind.Description => "the description",
        TailKind.Checks => "the last checks",
        TailKind.Fixes => "fixes after the early view",
        _ => Whole,
    };
}
