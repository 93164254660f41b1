using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>An episode to come as the plan counts it. Minutes from planning; days as <see cref="SilencePenalty.DayNumber"/>.</summary>
internal sealed record EpisodeRow
{
    public required UpcomingEpisode Upcoming { get; init; }

    /// <summary>Position of its series in <see cref="EpisodeTable.Series"/>.</summary>
    public required int Series { get; init; }

    /// <summary>The stage whose finish makes it ready; −1 where no work is left.</summary>
    public required int ReadyStage { get; init; }

    /// <summary>The stage of fixes after early view; −1 for none.</summary>
    public required int FixesStage { get; init; }

    /// <summary>Minutes from ready to the public moment at least: safety lead and early view.</summary>
    public required int Lead { get; init; }

    /// <summary>The opening of the slot it is pinned to; −1 for none.</summary>
    public required int PinnedOpening { get; init; }

    /// <summary>The end of the day that was told last; −1 for none.</summary>
    public required int ToldBy { get; init; }
}

/// <summary>A series as the plan counts it.</summary>
internal sealed record SeriesRow
{
    public required Series Series { get; init; }

    public required Promise Promise { get; init; }

    public required bool PromiseAssumed { get; init; }

    /// <summary>Upload days made, ascending, each once.</summary>
    public required ValueList<LocalDate> Uploads { get; init; }

    /// <summary>The day from which its silence counts: the last upload, or the end of its rest, or today where nothing is out.</summary>
    public required int SilentFrom { get; init; }

    /// <summary>Days it may be silent, for choosing whose episode takes a slot.</summary>
    public int LongestSilence => Promise.LongestSilenceDays ?? Math.Max(1, 31 / Promise.UploadsPerMonth!.Value);

    /// <summary>Its episodes to come, in story order.</summary>
    public required ValueList<int> Episodes { get; init; }
}

/// <summary>Episodes and series to come, in columns.</summary>
internal sealed record EpisodeTable(IReadOnlyList<EpisodeRow> Episodes, IReadOnlyList<SeriesRow> Series)
{
    /// <summary>A promise that a series made, or the settings', or the assumed one.</summary>
    public static (Promise Promise, bool Assumed) PromiseOf(Workshop workshop, Series series) => series.Promise is { } own
        ? (own, false)
        : (new Promise { LongestSilenceDays = workshop.Settings.SeriesPromiseDays ?? Defaults.SeriesPromiseDays },
            workshop.Settings.SeriesPromiseDays is null);
}
