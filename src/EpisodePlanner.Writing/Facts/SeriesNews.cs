using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Writing;

/// <summary>What was done on one task, or on the footage of one episode, since an upload.</summary>
/// <param name="Name">The task, or the episode's title.</param>
/// <param name="Task">The task; null for footage.</param>
/// <param name="Done">The log since then, in order.</param>
internal sealed record TaskNews(string Name, WorkTask? Task, ValueList<WorkDone> Done);

/// <summary>What happened since the last upload of a series, or of the channel for work on the workshop itself.</summary>
/// <param name="Last">The last upload, or null.</param>
/// <param name="Tasks">What was done since, task by task in the order in which they were taken up.</param>
internal sealed record SeriesNews(Upload? Last, ValueList<TaskNews> Tasks)
{
    public IEnumerable<WorkDone> Done => Tasks.SelectMany(news => news.Done);

    public static SeriesNews Of(Id? series, Ledger ledger)
    {
        var last = ledger.Workshop.Uploads
            .Where(upload => (series is null || upload.Series == series) && upload.Date <= ledger.Today)
            .MaxBy(upload => upload.Date);
        var entries = ledger.Log
            .Where(entry => ledger.SeriesOf(entry) == series && IsAfter(last, entry, ledger))
            .ToList();
        return new SeriesNews(last, OfTasks(entries, ledger).Concat(OfFootage(entries, ledger)).ToValueList());
    }

    // Uploads are kept by date alone; what was logged on the day of one counts to it.
    private static bool IsAfter(Upload? upload, LogEntry entry, Ledger ledger) =>
        ledger.At(entry.At).Date > (upload?.Date ?? LocalDate.MinIsoValue);

    private static IEnumerable<TaskNews> OfTasks(List<LogEntry> entries, Ledger ledger) => entries
        .Select(entry => entry.Task is { } id ? ledger.Workshop.Tasks.Find(id) : null)
        .OfType<WorkTask>()
        .DistinctBy(task => task.Id)
        .Select(task => new TaskNews(task.Name, task, Among(entries, WorkDone.Of(task, ledger))));

    private static IEnumerable<TaskNews> OfFootage(List<LogEntry> entries, Ledger ledger) => ledger.Plan.Episodes
        .Select(episode => new TaskNews(episode.Title, null, Among(entries, WorkDone.Of(episode, ledger))))
        .Where(news => news.Done.Count > 0);

    private static ValueList<WorkDone> Among(List<LogEntry> entries, IEnumerable<WorkDone> works) =>
        works.Where(work => entries.Exists(entry => entry.Id == work.Entry.Id)).ToValueList();
}
