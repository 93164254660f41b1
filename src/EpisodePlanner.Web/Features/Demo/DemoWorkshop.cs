using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using NodaTime;

namespace EpisodePlanner.Web.Features.Demo;

/// <summary>
/// The demo that comes with the planner. As long as nobody touched it, each start puts one that is moved to today in its
/// place; once somebody did, it is theirs.
/// </summary>
internal sealed partial class DemoWorkshop(WorkshopStore store, TimeProvider clock, ILogger<DemoWorkshop> log)
{
    private const string Who = "the demo";
    private const string Resource = "harbour-shed.json";

    /// <summary>Lays the demo in where it is missing or out of date.</summary>
    public async Task Lay(CancellationToken stop)
    {
        var fresh = Fresh();
        if (await Find(stop) is not { } there)
        {
            await store.Create(fresh, Who, null, stop);
        }
        else if (there.Version > 1)
        {
            LogKept(there.Workshop.Name);
        }
        else if (!IsSame(there.Workshop, fresh)
            && await store.Delete(there.Id, Who, new Expectation.WorkshopAt([there.Version]), stop) is Made)
        {
            await store.Create(fresh, Who, null, stop);
        }
    }

    /// <summary>Dates move by whole weeks, so most starts find it as it should be.</summary>
    private static bool IsSame(Workshop one, Workshop other) => WorkshopFile.Write(one).AsSpan().SequenceEqual(WorkshopFile.Write(other));

    private static Workshop Read()
    {
        using var stream = typeof(DemoWorkshop).Assembly.GetManifestResourceStream(Resource)!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return WorkshopFile.Read(bytes.ToArray()).Thing ?? throw new InvalidOperationException("The demo is not sound.");
    }

    private Workshop Fresh()
    {
        var workshop = Read();
        var zone = DateTimeZoneProviders.Tzdb[workshop.Zone];
        return DemoDates.Move(workshop, Instant.FromDateTimeOffset(clock.GetUtcNow()).InZone(zone).Date);
    }

    private async Task<Snapshot?> Find(CancellationToken stop)
    {
        foreach (var line in await store.List(stop))
        {
            if ((await store.Find(line.Id, stop)).Found is { Workshop.Demo: not null } found)
            {
                return found;
            }
        }

        return null;
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "“{Name}” was changed since it was laid in; it is kept as it is, with its dates.")]
    private partial void LogKept(string name);
}
