using System.Linq.Expressions;
using EpisodePlanner.Data.Rows;
using EpisodePlanner.Planning;
using Microsoft.EntityFrameworkCore;

namespace EpisodePlanner.Data.Reading;

/// <summary>Reads the changes that were made.</summary>
internal static class History
{
    /// <summary>A line of the history, without what was changed.</summary>
    public static Expression<Func<ChangeRow, HistoryLine>> Line { get; } = row => new HistoryLine(
        row.Version, row.At, row.Who, row.Act, row.Of, row.Says, row.UndoneBy != null);

    /// <summary>The changes of a workshop.</summary>
    public static IQueryable<ChangeRow> Of(PlannerContext context, Id workshop)
    {
        var key = workshop.ToString();
        return context.Changes.AsNoTracking().Where(row => row.Workshop == key);
    }

    /// <summary>The changes that somebody made, other than by taking back or making again.</summary>
    public static IQueryable<ChangeRow> Made(this IQueryable<ChangeRow> changes) => changes.Where(row =>
        row.Of == null
        && (row.Act == Act.Change || row.Act == Act.Import || row.Act == Act.Restore || row.Act == Act.Keep));

    /// <summary>The change that led to a version, or null.</summary>
    public static Task<ChangeRow?> At(this IQueryable<ChangeRow> changes, long version, CancellationToken stop) =>
        changes.SingleOrDefaultAsync(row => row.Version == version, stop);

    /// <summary>The change as it is handed out.</summary>
    public static StoredChange ToStored(this ChangeRow row) => new(
        new HistoryLine(row.Version, row.At, row.Who, row.Act, row.Of, row.Says, row.UndoneBy is not null),
        row.ReadAfter(),
        row.ReadBefore());

    /// <summary>What was changed.</summary>
    public static Change ReadAfter(this ChangeRow row) => Bodies.ReadChange(row.After, Name(row));

    /// <summary>The change that leads back.</summary>
    public static Change ReadBefore(this ChangeRow row) => Bodies.ReadChange(row.Before, Name(row));

    /// <summary>A sentence of the history within another.</summary>
    public static string Inside(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static string Name(ChangeRow row) => $"of change {row.Version} of workshop {row.Workshop}";
}
