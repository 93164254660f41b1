using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Serving;

/// <summary>Says what is wrong with the database, and when to ask again.</summary>
internal static class StorageTroubles
{
    public static Problem Problem(StorageTroubleException trouble) =>
        Problems.Of(ProblemTypes.StorageUnavailable, trouble.Message, RetryAfter(trouble.Trouble));

    /// <summary>Seconds: short where it mends itself, long where somebody must do something.</summary>
    private static int RetryAfter(StorageTrouble trouble) => trouble switch
    {
        StorageTrouble.Locked or StorageTrouble.NotReady => 1,
        StorageTrouble.Away => 5,
        _ => 60,
    };
}
