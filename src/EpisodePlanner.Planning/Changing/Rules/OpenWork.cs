namespace EpisodePlanner.Planning;

/// <summary>
/// Follows the log of one task or one episode in time: what is begun is open until it is worked on partly, done or
/// failed. An entry without a stage or part speaks of all of them.
/// </summary>
internal sealed class OpenWork
{
    private readonly Inspection inspection;
    private readonly SortedDictionary<string, Id> openedBy = new(StringComparer.Ordinal);

    private OpenWork(Inspection inspection) => this.inspection = inspection;

    public static void Check(Inspection inspection, IEnumerable<LogEntry> entries)
    {
        var work = new OpenWork(inspection);
        foreach (var moment in entries.OrderBy(e => e.At).ThenBy(e => e.Id).GroupBy(e => e.At))
        {
            work.Pass([.. moment]);
        }
    }

    // Of entries at one moment, ends come first; an end that found nothing open ends what began at the same moment.
    private void Pass(LogEntry[] moment)
    {
        var ends = moment.Where(e => e.Outcome is not LogOutcome.Begun).ToArray();
        var idle = ends.Where(e => !TryClose(Stretch(e))).ToArray();
        foreach (var begun in moment.Where(e => e.Outcome is LogOutcome.Begun))
        {
            Open(begun);
        }

        foreach (var end in idle)
        {
            TryClose(Stretch(end));
        }
    }

    private void Open(LogEntry begun)
    {
        var stretch = Stretch(begun);
        var open = stretch.Length == 0 ? openedBy.Values.Cast<Id?>().FirstOrDefault() : Opener(stretch) ?? Opener("");
        if (open is { } other)
        {
            inspection.Refuse(
                ThingKinds.Log.At(begun.Id),
                $"This work was already begun by log entry '{other}' and is still open; log its end before it begins again.");
            return;
        }

        openedBy.Add(stretch, begun.Id);
    }

    private bool TryClose(string stretch)
    {
        if (stretch.Length > 0)
        {
            return openedBy.Remove(stretch) | openedBy.Remove("");
        }

        var anyOpen = openedBy.Count > 0;
        openedBy.Clear();
        return anyOpen;
    }

    private Id? Opener(string stretch) => openedBy.TryGetValue(stretch, out var id) ? id : null;

    private static string Stretch(LogEntry entry) => entry switch
    {
        { Stage: { } stage } => stage.ToString(),
        { Part: { } part and not TailKind.Everything } => part.ToString(),
        _ => "",
    };
}
