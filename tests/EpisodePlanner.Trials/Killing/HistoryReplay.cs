using System.Text;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Killing;

/// <summary>
/// Makes a workshop's changes once more, by the planner's own rules and without the server, and holds the outcome against
/// the server's export.
/// </summary>
internal sealed class HistoryReplay
{
    private readonly string path;
    private Workshop workshop;

    private HistoryReplay(string path, Workshop workshop, long version) =>
        (this.path, this.workshop, Version) = (path, workshop, version);

    /// <summary>The version reached.</summary>
    public long Version { get; private set; }

    /// <summary>Begins with what the server has now.</summary>
    public static async Task<HistoryReplay> Begin(Api api, string path)
    {
        var (workshop, version) = await Export(api, path);
        return new HistoryReplay(path, workshop, version);
    }

    /// <summary>Makes every change since, one version after the other.</summary>
    /// <exception cref="TrialException">A version is missing, or the outcome is another.</exception>
    public async Task Follow(Api api)
    {
        var (expected, newest) = await Export(api, path);
        while (Version < newest)
        {
            workshop = Apply(await Change(api, Version + 1), Version + 1);
            Version++;
        }

        if (!WorkshopFile.Write(workshop).AsSpan().SequenceEqual(WorkshopFile.Write(expected)))
        {
            throw new TrialException($"The export of version {newest} is not what its changes make.");
        }
    }

    private Workshop Apply(Change change, long version) => Changes.Apply(workshop, change) switch
    {
        Applied applied => applied.Workshop,
        var refused => throw new TrialException($"Change {version} can't be made again: {refused}"),
    };

    private async Task<Change> Change(Api api, long version)
    {
        var answer = (await api.Get($"{path}/changes/{version}")).Must($"GET change {version}");
        var read = ChangeFile.ReadStored(Encoding.UTF8.GetBytes(answer.Json["after"]!.ToJsonString()));
        return read.IsRead
            ? read.Thing
            : throw new TrialException($"Change {version} can't be read: {string.Join(' ', read.Reasons)}");
    }

    private static async Task<(Workshop Workshop, long Version)> Export(Api api, string path)
    {
        var answer = (await api.Get($"{path}/export")).Must("GET export");
        var read = WorkshopFile.Read(Encoding.UTF8.GetBytes(answer.Body));
        return read.IsRead
            ? (read.Thing, await NewestVersion(api, path))
            : throw new TrialException($"The export is not sound: {string.Join(' ', read.Reasons)}");
    }

    private static async Task<long> NewestVersion(Api api, string path) =>
        (await api.Get(path)).Must("GET the workshop").Version is { } tag && long.TryParse(tag.Trim('"'), out var version)
            ? version
            : throw new TrialException("The workshop has no version.");
}
