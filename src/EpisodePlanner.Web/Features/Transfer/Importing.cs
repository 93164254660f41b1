using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;

namespace EpisodePlanner.Web.Features.Transfer;

/// <summary>Says what an import would do.</summary>
/// <param name="desk">Makes the plans before and after.</param>
internal sealed class Importing(PlanDesk desk)
{
    private static readonly string[] Singles = [Aggregate.About.Kind, Aggregate.Settings.Kind, Aggregate.Accepted.Kind];

    /// <summary>A new workshop.</summary>
    public async Task<ImportPreview> Preview(Workshop file, CancellationToken stop)
    {
        var after = await desk.Once(file, desk.Minute(), stop);
        return Preview(null, null, file, after);
    }

    /// <summary>The replacement of what a workshop holds.</summary>
    /// <returns>The preview, or what speaks against the replacement.</returns>
    public async Task<(ImportPreview? Preview, ValueList<Reason> Reasons)> Preview(Snapshot now, Workshop file, CancellationToken stop)
    {
        var result = Differences.Between(now.Workshop, file) is { } change ? Changes.Apply(now.Workshop, change) : null;
        if (result is Refused refused)
        {
            return (null, refused.Reasons);
        }

        var to = result is Applied applied ? applied.Workshop : now.Workshop;
        var before = await desk.Current(now, PlanKey.UsualSchedules, stop);
        var after = await desk.Once(to, desk.Minute(), stop);
        return (Preview(now, before.Plan, to, after), []);
    }

    private static ImportPreview Preview(Snapshot? now, Plan? before, Workshop to, Plan after) => new()
    {
        Version = now?.Version,
        Name = to.Name,
        Kinds = Wholes(now?.Workshop, to).Concat(ThingKinds.All.Select(kind => Count(kind, now?.Workshop, to))).ToValueList(),
        NextUploadBefore = before is null ? null : NextUploadView.Of(before),
        NextUploadAfter = NextUploadView.Of(after),
        Findings = after.Findings.Select(FindingView.Of).ToValueList(),
    };

    private static IEnumerable<ImportCount> Wholes(Workshop? from, Workshop to) => Singles.Zip(
        [
            Single(from is null ? null : (from.Name, from.Zone), (to.Name, to.Zone)),
            Single(from?.Settings, to.Settings),
            Single(from?.Accepted, to.Accepted),
        ],
        (kind, counts) => new ImportCount { Kind = kind, Added = counts.Added, Changed = counts.Changed, Removed = counts.Removed });

    private static (int Added, int Changed, int Removed) Single(object? from, object? to) => (from, to) switch
    {
        (null, null) => (0, 0, 0),
        (null, _) => (1, 0, 0),
        (_, null) => (0, 0, 1),
        _ => (0, from.Equals(to) ? 0 : 1, 0),
    };

    private static ImportCount Count(ThingKind kind, Workshop? from, Workshop to) => new()
    {
        Kind = kind.Name,
        Added = kind.All(to).Count(thing => from is null || kind.Find(from, thing.Id) is null),
        Changed = from is null ? 0 : kind.All(to).Count(thing => kind.Find(from, thing.Id) is { } was && !was.Equals(thing)),
        Removed = from is null ? 0 : kind.All(from).Count(thing => kind.Find(to, thing.Id) is null),
    };
}
