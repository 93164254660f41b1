using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Serving;

/// <summary>What keeps the database from being ready, while it is not.</summary>
internal sealed class Readiness
{
    private volatile StorageTroubleException? trouble;

    /// <summary>What the last try to prepare it met; null where none failed, or one succeeded since.</summary>
    public StorageTroubleException? Trouble
    {
        get => trouble;
        set => trouble = value;
    }

    /// <summary>What a trouble is due to: of a database that is not ready, whatever keeps it from being so.</summary>
    public StorageTroubleException CauseOf(StorageTroubleException met) =>
        met.Trouble == StorageTrouble.NotReady ? Trouble ?? met : met;
}
