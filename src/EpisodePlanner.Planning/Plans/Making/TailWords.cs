namespace EpisodePlanner.Planning;

/// <summary>The parts of a tail in words.</summary>
public static class TailWords
{
    /// <summary>The part as it stands after a title: "talk to camera".</summary>
    public static string Of(TailKind kind) => kind switch
    {
        TailKind.TalkToCamera => "talk to camera",
        TailKind.PickUps => "pick-ups",
        TailKind.EditPass => "edit",
        TailKind.Captions => "captions",
        TailKind.CoverPicture => "cover picture",
        TailKind.Description => "description",
        TailKind.Checks => "checks",
        TailKind.Fixes => "fixes after early view",
        _ => "film the rest, edit, finish",
    };
}
