namespace EpisodePlanner.Planning;

/// <summary>
/// When each episode goes out, once it is known when each can: in whole numbers. Minutes from planning, days as
/// <see cref="SilencePenalty.DayNumber"/>.
/// </summary>
public sealed record SlotQuestion
{
    /// <summary>The windows, by opening. One window, one episode.</summary>
    public required ValueList<AskedWindow> Windows { get; init; }

    /// <summary>The episodes to come.</summary>
    public required ValueList<SlotEpisode> Episodes { get; init; }

    /// <summary>The series, with their episodes in the order in which these go out.</summary>
    public required ValueList<SlotSeries> Series { get; init; }

    /// <summary>The channel's promise.</summary>
    public required SlotPromise Channel { get; init; }

    /// <summary>Least days between two uploads of the channel.</summary>
    public required int DaysBetweenUploads { get; init; }

    /// <summary>The day of the channel's last upload; far in the past for none.</summary>
    public required int LastUploadDay { get; init; }

    /// <summary>The last day that counts.</summary>
    public required int Through { get; init; }

    /// <summary>The minute that counts for what never goes out.</summary>
    public required int Never { get; init; }
}

/// <summary>An episode that waits for a slot.</summary>
/// <param name="Series">Its series, by position.</param>
/// <param name="Available">It may be public from this minute; −1 where it is never ready.</param>
/// <param name="AvailableDay">The local day of that minute.</param>
/// <param name="PinnedOpening">It goes out in no window that opens before; −1 for any.</param>
/// <param name="PublicBy">The minutes after which it is late: told dates and pinned slots.</param>
public sealed record SlotEpisode(int Series, int Available, int AvailableDay, int PinnedOpening, ValueList<int> PublicBy)
{
    /// <summary>Whether it is ready for a window, and is not pinned to a later one.</summary>
    public bool Fits(AskedWindow window) => Available >= 0 && window.End > Available && window.Opening >= PinnedOpening;

    /// <summary>The public minute in a window.</summary>
    public int MinuteIn(AskedWindow window) => Math.Max(0, Math.Max(window.Opening, Available));

    /// <summary>The day of that minute.</summary>
    public int DayIn(AskedWindow window) => Available > window.Opening ? AvailableDay : window.Day;

    /// <summary>Minutes by which it is late at a minute.</summary>
    public long LateAt(int minute) => PublicBy.Sum(by => (long)Math.Max(0, minute - by));
}

/// <summary>A longest silence, counted from a day.</summary>
/// <param name="SilentFrom">The day from which silence counts.</param>
/// <param name="Longest">The longest silence promised, days.</param>
/// <param name="OpenFrom">
/// The day from which the open end counts: the last day on which something could be out at the earliest. Holding the last
/// episode back shortens nothing, as nothing is planned after it.
/// </param>
public sealed record SlotPromise(int SilentFrom, int Longest, int OpenFrom)
{
    /// <summary>
    /// Uploads a calendar month, where that is what is promised; <see cref="Longest"/> is then the days of a month for each.
    /// </summary>
    public SlotMonths? Months { get; init; }
}

/// <summary>A promise of uploads in each calendar month.</summary>
/// <param name="Each">How many.</param>
/// <param name="Made">The days of the uploads made, ascending, each once.</param>
/// <param name="Starts">The first days of the months that count, and of the one after.</param>
public sealed record SlotMonths(int Each, ValueList<int> Made, ValueList<int> Starts);

/// <summary>A series whose episodes wait for slots.</summary>
/// <param name="Promise">Its promise.</param>
/// <param name="Episodes">Its episodes by index, in the order in which they go out.</param>
public sealed record SlotSeries(SlotPromise Promise, ValueList<int> Episodes);
