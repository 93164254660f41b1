using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What <see cref="PlanObjective"/> needs besides episodes and slots.</summary>
internal sealed record ObjectiveInput
{
    /// <summary>The last minute of the plan.</summary>
    public required int Horizon { get; init; }

    /// <summary>The last day of the plan.</summary>
    public required LocalDate LastDay { get; init; }

    /// <summary>Stages whose finish is needed by a minute.</summary>
    public required IReadOnlyList<(int Stage, int By)> NeededBy { get; init; }

    /// <summary>Stages with an accepted start in the next seven days.</summary>
    public required IReadOnlyList<(int Stage, int Start)> AcceptedStarts { get; init; }

    /// <summary>The day number from which the channel's silence counts.</summary>
    public required int ChannelSilentFrom { get; init; }

    /// <summary>The channel's longest silence, days.</summary>
    public required int ChannelPromise { get; init; }

    /// <summary>The end of each window by its opening, for pinned slots.</summary>
    public required IReadOnlyDictionary<int, int> WindowEnds { get; init; }

    public int LastDayNumber => SilencePenalty.DayNumber(LastDay);

    /// <summary>The last minute at which a pinned episode is in its slot.</summary>
    public int PinnedUntil(EpisodeRow episode) =>
        Math.Max(episode.PinnedOpening, WindowEnds.GetValueOrDefault(episode.PinnedOpening, episode.PinnedOpening));
}
