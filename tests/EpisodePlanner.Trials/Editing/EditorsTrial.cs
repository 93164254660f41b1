using System.Diagnostics;
using System.Text;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Editing;

/// <summary>
/// Many editors of one workshop at once. Each counts up a place of its own and one that it shares, looking again where
/// another was quicker; then each two link two tasks to each other, one from either side. No count may be lost, and the
/// links must not close a circle.
/// </summary>
/// <param name="Editors">How many; an even number.</param>
/// <param name="Rounds">How often each counts.</param>
public sealed record EditorsTrial(int Editors, int Rounds)
{
    private const int Sharing = 20;

    /// <summary>Runs the trial on a server.</summary>
    /// <exception cref="TrialException">The server lost something, or let something in.</exception>
    public async Task<EditorsFigures> Run(Api api)
    {
        var workshop = await api.Import(TrialWorkshop.File("Editors", [.. Own(), .. Shared()], Pairs()));
        var editors = Enumerable.Range(0, Editors)
            .Select(number => new Editor(api, workshop, OwnOf(number), SharedBy(number), TaskOf(number), TaskOf(number ^ 1)))
            .ToList();
        var begun = Stopwatch.GetTimestamp();
        await Task.WhenAll(editors.Select(editor => Task.Run(() => editor.Work(Rounds), api.Stop)));
        var took = Stopwatch.GetElapsedTime(begun);

        await CheckCounts(api, workshop);
        await CheckLinks(api, workshop, editors);
        return new EditorsFigures(
            Editors,
            editors.Sum(editor => editor.Made),
            editors.Sum(editor => editor.Retries),
            editors.Count(editor => !editor.HasLinked),
            took,
            editors.Max(editor => editor.Slowest));
    }

    private IEnumerable<string> Own() => Enumerable.Range(0, Editors).Select(OwnOf);

    private IEnumerable<string> Shared() => Enumerable.Range(0, Editors).Select(SharedBy).Distinct();

    private IEnumerable<string> Pairs() => Enumerable.Range(0, Editors).Select(TaskOf);

    private static string OwnOf(int number) => $"own-{number}";

    private static string SharedBy(int number) => $"shared-{number / Sharing}";

    private static string TaskOf(int number) => $"task-{number}";

    private async Task CheckCounts(Api api, string workshop)
    {
        foreach (var counted in Enumerable.Range(0, Editors).SelectMany(Counted).CountBy(place => place))
        {
            var (place, count) = (counted.Key, counted.Value * Rounds);
            var found = TrialWorkshop.CountOf((await api.Get($"{workshop}/places/{place}")).Must("GET").Json);
            if (found != count)
            {
                throw new TrialException($"{place} was counted up {count} times and stands at {found}.");
            }
        }

        static string[] Counted(int number) => [OwnOf(number), SharedBy(number)];
    }

    /// <summary>Reading the file looks for circles, by the planner's own rule, beside what the editors saw.</summary>
    private static async Task CheckLinks(Api api, string workshop, List<Editor> editors)
    {
        if (editors.Chunk(2).Any(pair => pair[0].HasLinked == pair[1].HasLinked))
        {
            throw new TrialException("Of two links that close a circle together, not exactly one was made.");
        }

        var export = (await api.Get($"{workshop}/export")).Must("GET export").Body;
        var read = WorkshopFile.Read(Encoding.UTF8.GetBytes(export));
        if (!read.IsRead)
        {
            throw new TrialException($"The export is not sound: {string.Join(' ', read.Reasons)}");
        }
    }
}
