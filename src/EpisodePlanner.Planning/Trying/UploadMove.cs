using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>An upload whose day is another one in a second plan.</summary>
/// <param name="Episode">The episode's id.</param>
/// <param name="Title">Its working title.</param>
/// <param name="Series">Its series.</param>
/// <param name="From">Its day in the first plan; null where it had none.</param>
/// <param name="To">Its day in the second plan; null where it has none.</param>
public sealed record UploadMove(Id Episode, string Title, Id Series, LocalDate? From, LocalDate? To)
{
    /// <summary>Days by which it is later, negative for earlier; null where one of the plans has no day for it.</summary>
    public int? Days => (From, To) is ({ } from, { } to) ? Period.DaysBetween(from, to) : null;

    /// <summary>Whether it comes later, or not at all any more.</summary>
    public bool IsLater => From is not null && (To is null || Days > 0);
}

/// <summary>Finds what is another day in a second plan.</summary>
public static class UploadMoves
{
    /// <summary>The episodes of both plans whose days differ, in the order of the first plan.</summary>
    /// <param name="before">The first plan.</param>
    /// <param name="after">The second plan; an episode it does not know is left out.</param>
    public static ValueList<UploadMove> Between(Plan before, Plan after)
    {
        var later = after.Episodes.ToDictionary(episode => episode.Id, episode => episode.Date);
        return before.Episodes
            .Where(episode => later.TryGetValue(episode.Id, out var date) && date != episode.Date)
            .Select(episode => new UploadMove(episode.Id, episode.Title, episode.Series, episode.Date, later[episode.Id]))
            .ToValueList();
    }
}
