using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>A workshop as it was read for a command.</summary>
/// <param name="Workshop">The workshop, a demo moved to today.</param>
/// <param name="Now">The moment to plan from.</param>
/// <param name="MovedWeeks">By how many weeks the dates of a demo were moved; null where they were not touched.</param>
internal sealed record OpenedWorkshop(Workshop Workshop, Instant Now, int? MovedWeeks)
{
    /// <summary>Reads a file; null, with every reason on the error output, where it is no sound workshop.</summary>
    /// <param name="file">The path as it was typed.</param>
    /// <param name="now">The moment that was typed, or null.</param>
    /// <param name="surroundings">The console and the clock.</param>
    public static OpenedWorkshop? Open(string file, Instant? now, Surroundings surroundings)
    {
        if (FileBytes.Read(file, out var problem) is not { } bytes)
        {
            Complaints.About(file, [new Reason("", problem)], surroundings);
            return null;
        }

        var read = WorkshopFile.Read(bytes);
        if (!read.IsRead)
        {
            Complaints.About(file, read.Reasons, surroundings);
            return null;
        }

        return now is { } moment
            ? new OpenedWorkshop(read.Thing, moment, null)
            : AtToday(read.Thing, Instant.FromDateTimeOffset(surroundings.Clock.GetUtcNow()));
    }

    /// <summary>The same; null, with the reason, also where there is nothing to plan in it.</summary>
    /// <inheritdoc cref="Open" path="/param"/>
    public static OpenedWorkshop? WithWork(string file, Instant? now, Surroundings surroundings)
    {
        if (Open(file, now, surroundings) is not { } opened)
        {
            return null;
        }

        if (Emptiness.Problem(opened.Workshop) is { } nothing)
        {
            Complaints.About(file, [nothing], surroundings);
            return null;
        }

        return opened;
    }

    private static OpenedWorkshop AtToday(Workshop workshop, Instant now)
    {
        var today = now.InZone(DateTimeZoneProviders.Tzdb[workshop.Zone]).Date;
        var moved = DemoDates.Move(workshop, today);
        int? weeks = workshop.Demo is { } demo ? Period.DaysBetween(demo.Anchor, moved.Demo!.Anchor) / 7 : null;
        return new OpenedWorkshop(moved, now, weeks);
    }
}
