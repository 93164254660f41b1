using EpisodePlanner.Planning.Files;
using EpisodePlanner.Scheduling;
using NodaTime;

namespace EpisodePlanner.Planning.Tests.Demo;

public sealed class HarbourShedTests
{
    private static readonly Workshop Shed = DemoSeed.Read("harbour-shed.json");

    private static LocalDate Anchor => Shed.Demo!.Anchor;

    private static Instant AnchorMorning =>
        Anchor.At(new LocalTime(8, 0)).InZoneStrictly(DateTimeZoneProviders.Tzdb[Shed.Zone]).ToInstant();

    [Fact]
    public void File_IsCanonical() =>
        Assert.Equal(DemoSeed.Bytes("harbour-shed.json"), WorkshopFile.Write(Shed));

    [Fact]
    public void Series_RunInParallelAndOneRests()
    {
        Assert.True(Shed.Series.Count(s => s.State is SeriesState.Active) >= 3);
        Assert.Contains(Shed.Series, s => s.State is SeriesState.Resting && s.RestingUntil > Anchor);
        Assert.Contains(Shed.Series, s => s.Promise?.UploadsPerMonth is not null);
    }

    [Fact]
    public void Series_OneIsAlreadyTooQuiet()
    {
        var tooQuiet = Shed.Series
            .Where(s => s.State is SeriesState.Active && s.Promise?.LongestSilenceDays < DaysSinceUpload(s.Id))
            .Select(s => s.Id.ToString());

        Assert.Equal("chart-wall", Assert.Single(tooQuiet));
    }

    [Fact]
    public void Tasks_AreOfEveryKind()
    {
        var stages = Shed.Tasks.SelectMany(t => t.Stages).ToList();
        var links = Shed.Tasks.SelectMany(t => t.Links).ToList();

        Assert.InRange(Shed.Tasks.Count, 80, 120);
        Assert.Equal(Enum.GetValues<WorkKind>(), Shed.Tasks.Select(t => t.Kind).Distinct().Order());
        Assert.Equal(Enum.GetValues<StageKind>(), stages.Select(s => s.Kind).Distinct().Order());
        Assert.Equal(Enum.GetValues<LinkKind>(), links.Select(l => l.Kind).Distinct().Order());
        Assert.Contains(links, l => l.LagMinutes > 0 && l.LagClock is LagClock.Elapsed);
        Assert.Contains(links, l => l.LagMinutes > 0 && l.LagClock is LagClock.Working);
        Assert.Contains(links, l => l.AtMostMinutes is not null);
        Assert.Contains(stages, s => s.Unbroken);
        Assert.Contains(stages, s => s.StaysSetUp);
        Assert.Contains(stages, s => s.MayComeLater);
        Assert.Contains(stages, s => s.LookAt.Count > 0);
        Assert.Contains(stages, s => s.Kind is StageKind.Wait && s.Needs.Count > 0);
    }

    [Fact]
    public void Stations_HaveBothPermissionsQuietHoursDaylightAndABooking()
    {
        Assert.True(Shed.People.Count >= 2);
        Assert.Equal(2, Shed.Machines.Count(m => m.MayRunAlone));
        Assert.Contains(Shed.Machines, m => m is { Kind: MachineKind.Printer, MayRunAlone: false });
        Assert.Contains(Shed.Places, p => p.Quiet.Count > 0);
        Assert.Contains(Shed.Places, p => p is { DaylightOnly: true, FitDayChance: not null });
        Assert.All(Shed.Bookings, b => Assert.True(Shed.Places.Find(b.Place)!.ByBookingOnly));
        Assert.Contains(Shed.Bookings, b => b.From.Date > Anchor && b.CancelBy > Anchor);
    }

    [Fact]
    public void Uploads_FillHalfAYearBeforeTheAnchor()
    {
        Assert.InRange(Shed.Uploads.Count, 25, 40);
        Assert.True(Shed.Uploads.Min(u => u.Date).PlusMonths(6) < Anchor);
        Assert.True(Shed.Uploads.Max(u => u.Date) < Anchor);
        Assert.All(Shed.Series, s => Assert.Contains(Shed.Uploads, u => u.Series == s.Id));
    }

    [Fact]
    public void Uploads_ShowOnlyFinishedMilestonesOfFinishedEpisodes()
    {
        var shown = Shed.Uploads.SelectMany(u => Shed.Episodes.Find(u.Episode!.Value)!.Milestones).ToHashSet();

        Assert.All(
            Shed.Tasks.Where(t => t.Milestone is { } m && shown.Contains(m)),
            t => Assert.True(IsFinished(t), $"'{t.Id}' is shown and not finished."));
        Assert.All(
            Shed.Uploads,
            u => Assert.True(LastWorkOn(u.Episode!.Value) < u.Date, $"'{u.Episode}' was worked on after it was out."));
    }

    [Fact]
    public void Log_HoldsSixtyFinishedTasksWithFailuresAndOneRunGoingOn()
    {
        Assert.True(Shed.Tasks.Count(IsFinished) >= 60);
        Assert.All(Shed.Log, e => Assert.True(e.At <= AnchorMorning, $"'{e.Id}' is after the anchor's morning."));
        Assert.Contains(Shed.Log, e => e is { Outcome: LogOutcome.Failed, Task: { } task } && IsFinished(task));
        Assert.Contains(Shed.Log, e => e is { Outcome: LogOutcome.Failed, Task: { } task } && !IsFinished(task));
        Assert.Contains(Shed.Log, e => e is { Outcome: LogOutcome.Partly, Task: { } task } && !IsFinished(task));
        Assert.Single(Shed.Log, e => e.Outcome is LogOutcome.Begun && StageOf(e).Kind is StageKind.Run);
    }

    [Fact]
    public void Log_FinishesNothingBeforeWhatItFollows()
    {
        Assert.All(
            Shed.Tasks.Where(IsFinished).SelectMany(t => t.Links),
            link => Assert.True(IsFinished(link.Task), $"'{link.Task}' is followed by finished work."));
    }

    [Fact]
    public void Shots_AreGotLostAndMissing()
    {
        var shots = Shed.Tasks.SelectMany(t => t.Shots).ToList();

        Assert.Equal(Enum.GetValues<ShotState>(), shots.Select(s => s.State).Distinct().Order());
        Assert.Contains(shots, s => s is { State: ShotState.Missing, OnceOnly: true, Required: true, LostBy: not null });
        Assert.Contains(shots, s => s is { State: ShotState.Missing, OnceOnly: true, Required: true, Moment: ShotMoment.Before });
    }

    [Fact]
    public void TimedLines_OneRunsOutWithinTwoWeeks() =>
        Assert.Contains(Shed.TimedLines, l => l.Until > Anchor && l.Until <= Anchor.PlusWeeks(2));

    [Fact]
    public void Episodes_AreCutAheadForEveryActiveSeriesAndLeaveTailsUncut()
    {
        var ahead = Shed.Episodes.Where(e => Shed.Uploads.All(u => u.Episode != e.Id)).ToList();
        var cut = Shed.Episodes.SelectMany(e => e.Milestones).ToHashSet();

        Assert.All(
            Shed.Series.Where(s => s.State is SeriesState.Active),
            s => Assert.Contains(ahead, e => e.Series == s.Id));
        Assert.Equal(
            ["ferry-crosses", "ferry-floats", "harbour-run", "kiln-trusted", "lamps-lit", "night-on-the-pier", "tide-on-the-wall"],
            Shed.Series.SelectMany(s => s.Milestones).Select(m => m.Id).Where(m => !cut.Contains(m)).Order().Select(m => m.ToString()));
    }

    [Fact]
    public void Tasks_StandAloneOnlyWhereIntended()
    {
        var followed = Shed.Tasks.SelectMany(t => t.Links).Select(l => l.Task).ToHashSet();

        Assert.Equal(
            ["service-router", "winter-trailer"],
            Shed.Tasks
                .Where(t => !IsFinished(t) && t.Links.Count == 0 && !followed.Contains(t.Id))
                .Select(t => t.Id.ToString()));
    }

    [Fact]
    public void OpenWork_FitsAboutFiveMonthsOfHours()
    {
        var hours = Shed.Tasks.Where(t => !IsFinished(t)).Sum(t =>
            (t.FilmingMinutes / 60m) + t.Stages.Where(s => s.Kind is StageKind.Attended).Sum(s => s.Hours));

        Assert.InRange(hours, 230, 400);
        Assert.InRange(Shed.Settings.Tail.Sum(p => p.Hours), 14, 18);
    }

    private static int DaysSinceUpload(Id series) =>
        Period.DaysBetween(Shed.Uploads.Where(u => u.Series == series).Max(u => u.Date), Anchor);

    private static bool IsFinished(Id task) => IsFinished(Shed.Tasks.Find(task)!);

    private static bool IsFinished(WorkTask task) => task.Stages.All(stage =>
        Shed.Log.Any(e => e.Outcome is LogOutcome.Done && e.Task == task.Id && (e.Stage is null || e.Stage == stage.Id)));

    private static Stage StageOf(LogEntry entry) =>
        Shed.Tasks.Find(entry.Task!.Value)!.Stages.Single(s => s.Id == entry.Stage);

    private static LocalDate LastWorkOn(Id episode) =>
        Shed.Log.Where(e => e.Episode == episode).Max(e => e.At).InZone(DateTimeZoneProviders.Tzdb[Shed.Zone]).Date;
}
